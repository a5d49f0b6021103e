package fettle.planner.problem;

import fettle.engine.units.InputException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A stretch of time in which a person is at a place and attends what is charged there.
 *
 * @param place where
 * @param span when
 */
public record Presence(Place place, Span span) {

    /**
     * The same times in order; what overlaps or meets at one place becomes one stretch.
     *
     * @throws InputException if one moment is at two places
     */
    public static List<Presence> merged(List<Presence> given) {
        List<Presence> sorted = new ArrayList<>(given);
        sorted.sort(Comparator.comparingInt(presence -> presence.span().fromMinute()));
        List<Presence> merged = new ArrayList<>();
        for (Presence next : sorted) {
            int last = merged.size() - 1;
            if (last < 0 || merged.get(last).span().toMinute() < next.span().fromMinute()) {
                merged.add(next);
            } else if (merged.get(last).place() == next.place()) {
                merged.set(last, merged.get(last).joined(next));
            } else if (merged.get(last).span().meets(next.span())) {
                throw new InputException("presence", clash(merged.get(last), next));
            } else {
                merged.add(next);
            }
        }
        return merged;
    }

    private Presence joined(Presence next) {
        return new Presence(place, new Span(span.fromMinute(), Math.max(span.toMinute(), next.span.toMinute())));
    }

    private static String clash(Presence one, Presence other) {
        return "minutes " + other.span.fromMinute() + " to "
                + Math.min(one.span.toMinute(), other.span.toMinute()) + " are spent both at " + one.place.label()
                + " and at " + other.place.label() + "; expected one place at a time. End one before the other begins.";
    }
}
