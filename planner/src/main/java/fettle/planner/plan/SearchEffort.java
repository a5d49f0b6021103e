package fettle.planner.plan;

/**
 * What a search took.
 *
 * @param seconds wall time [s]
 * @param plansTried plans looked at
 * @param boundSteps steps made for the bounds
 * @param cancelled whether it was stopped from outside
 */
public record SearchEffort(double seconds, long plansTried, long boundSteps, boolean cancelled) {}
