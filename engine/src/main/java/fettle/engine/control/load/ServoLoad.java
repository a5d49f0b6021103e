package fettle.engine.control.load;

import fettle.engine.control.linkage.TravelPoint;
import fettle.engine.units.Estimate;

/**
 * A servo under load at one pulse.
 *
 * @param point surface and linkage there
 * @param hingeNewtonMetres moment to design for [N·m]
 * @param servoNewtonMetres servo torque to design for [N·m]: moment · ratio / efficiency
 * @param expectedServoNewtonMetres servo torque to expect [N·m], with ±
 */
public record ServoLoad(
        TravelPoint point, double hingeNewtonMetres, double servoNewtonMetres, Estimate expectedServoNewtonMetres) {}
