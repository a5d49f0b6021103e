package fettle.engine.health.leakage;

import fettle.engine.units.Estimate;

/**
 * What one cell loses at rest.
 *
 * @param number position on the balance lead, from 1
 * @param lossAmps mean loss at rest [A]
 * @param excessAmps loss beyond the mean of the other cells [A]
 * @param alarm true where the excess is beyond doubt and beyond what cells usually differ by: a possible internal short
 */
public record CellLeak(int number, Estimate lossAmps, Estimate excessAmps, boolean alarm) {}
