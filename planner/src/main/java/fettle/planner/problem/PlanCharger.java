package fettle.planner.problem;

import org.jspecify.annotations.Nullable;

/**
 * A charger.
 *
 * @param name its name
 * @param source name of the source that feeds it
 * @param sharedWatts output power shared by its ports [W]; {@code null} if each port has its own
 * @param efficiency share of the source's power that reaches the packs, above 0 to 1
 */
public record PlanCharger(
        String name, String source, @Nullable Integer sharedWatts, double efficiency) {}
