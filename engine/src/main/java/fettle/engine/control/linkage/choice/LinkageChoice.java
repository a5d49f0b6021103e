package fettle.engine.control.linkage.choice;

import fettle.engine.control.linkage.FourBar;

/**
 * One linkage that gives the wanted throws.
 *
 * @param linkage the linkage
 * @param upServoRadians servo angle at the upper throw [rad]
 * @param downServoRadians servo angle at the lower throw [rad]
 * @param travelFraction share of the servo's travel it uses, 0 … 1
 * @param peakTorqueRatio largest servo torque over the hinge moment at the larger throw, for a moment that grows in
 *     proportion to the deflection; friction left out
 * @param marginRadians servo angle left before a toggle or dead centre [rad]; infinite where there is none
 */
public record LinkageChoice(
        FourBar linkage,
        double upServoRadians,
        double downServoRadians,
        double travelFraction,
        double peakTorqueRatio,
        double marginRadians) {}
