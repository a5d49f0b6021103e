package fettle.planner.solve;

/**
 * What a job takes of a resource, step after step.
 *
 * @param resource index of the resource
 * @param amounts what is taken in each step
 */
record Use(int resource, int[] amounts) {}
