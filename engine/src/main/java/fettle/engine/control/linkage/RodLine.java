package fettle.engine.control.linkage;

/**
 * The line of the rod at one servo angle.
 *
 * @param servoArmMetres signed moment arm of the rod's line about the servo shaft [m]; 0 on the arm's dead centre
 * @param hingeArmMetres signed moment arm about the hinge [m]; 0 where the surface toggles
 * @param transmissionRadians angle between rod and horn [rad], 0 … π; a right angle is best
 */
public record RodLine(double servoArmMetres, double hingeArmMetres, double transmissionRadians) {
    /** d(surface)/d(servo) by virtual work. */
    public double ratio() {
        return servoArmMetres / hingeArmMetres;
    }
}
