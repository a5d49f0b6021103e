package fettle.planner.solve;

/**
 * A charge a pack can be left at.
 *
 * @param fraction the charge
 * @param full whether time spent at it counts as time at full
 * @param stored whether it lies in the storage band
 */
record Level(double fraction, boolean full, boolean stored) {}
