package fettle.planner.solve;

/**
 * What a pack's day is judged by while it is searched.
 *
 * @param start cost of starting each option at each step; infinite where it cannot
 * @param fullMinute cost of one minute at full
 * @param storageUnit cost of one unit of missed storage
 * @param runsOnce whether a run may be met only once in a day; without it the day found is a bound on all days
 */
record Costs(double[][] start, double fullMinute, double storageUnit, boolean runsOnce) {}
