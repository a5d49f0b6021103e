package fettle.engine.outing;

import java.time.Instant;

/**
 * A time in which a person is at a place and stays with what is charged there.
 *
 * @param spot where
 * @param from from when
 * @param until until when, later
 */
public record Attended(Spot spot, Instant from, Instant until) {
    /** Whether any moment is in both. */
    boolean meets(Attended other) {
        return from.isBefore(other.until) && other.from.isBefore(until);
    }
}
