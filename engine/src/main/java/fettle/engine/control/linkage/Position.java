package fettle.engine.control.linkage;

/**
 * A linkage at one servo angle.
 *
 * @param servoRadians servo angle from neutral [rad]
 * @param surfaceRadians surface angle from neutral [rad], trailing edge up positive
 * @param ratio d(surface)/d(servo); servo torque = hinge moment · ratio, without friction
 */
public record Position(double servoRadians, double surfaceRadians, double ratio) {
    /** Hinge moment held per servo torque; infinite on a dead centre of the arm. */
    public double mechanicalAdvantage() {
        return 1 / Math.abs(ratio);
    }
}
