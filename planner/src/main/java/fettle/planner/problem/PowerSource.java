package fettle.planner.problem;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What feeds chargers.
 *
 * @param name its name
 * @param place where it is
 * @param limitWatts most power at any moment [W], &gt; 0
 * @param energyWattHours energy it gives over the whole problem [Wh]; {@code null} where it does not run out
 * @param available when it can be used, e.g. while a generator has fuel; empty means always
 */
public record PowerSource(
        String name, Place place, int limitWatts, @Nullable Integer energyWattHours, List<Span> available) {
    public PowerSource {
        available = List.copyOf(available);
    }

    /** A source that gives power at any time without end. */
    public static PowerSource endless(String name, Place place, int limitWatts) {
        return new PowerSource(name, place, limitWatts, null, List.of());
    }
}
