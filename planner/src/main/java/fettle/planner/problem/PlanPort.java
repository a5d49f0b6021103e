package fettle.planner.problem;

/**
 * One output of a charger. What it can charge, and at which currents, is said by the {@link ChargeWay}s.
 *
 * @param name its name, unique over all chargers
 * @param charger name of its charger
 * @param limitWatts most output power [W], &gt; 0
 */
public record PlanPort(String name, String charger, int limitWatts) {}
