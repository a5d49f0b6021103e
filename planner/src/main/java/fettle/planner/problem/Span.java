package fettle.planner.problem;

import fettle.engine.units.InputException;

/**
 * A stretch of time.
 *
 * @param fromMinute its first minute
 * @param toMinute the minute after its last, later than the first
 */
public record Span(int fromMinute, int toMinute) {
    public Span {
        if (toMinute <= fromMinute) {
            throw new InputException(
                    "span",
                    "a stretch of time ends at minute " + toMinute + ", not after its start at minute " + fromMinute
                            + "; expected an end after the start. Where it crosses midnight, give the next day.");
        }
    }

    public int minutes() {
        return toMinute - fromMinute;
    }

    /** Whether another stretch lies wholly in this one. */
    public boolean covers(int from, int to) {
        return fromMinute <= from && to <= toMinute;
    }

    /** Whether any minute is in both. */
    public boolean meets(Span other) {
        return fromMinute < other.toMinute && other.fromMinute < toMinute;
    }
}
