package fettle.planner.curve;

import fettle.planner.problem.ChargeCurve;

/**
 * A curve and how well it follows the simulation.
 *
 * @param curve the curve
 * @param greatestErrorFraction largest difference of a whole charge's time from its simulation, over starts from a tenth to
 *     nine tenths, as a share of the simulated time
 */
public record FittedCurve(ChargeCurve curve, double greatestErrorFraction) {}
