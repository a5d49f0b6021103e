package fettle.engine.control.linkage;

/**
 * A point no travel may pass.
 *
 * @param servoRadians servo angle there [rad]
 * @param surfaceRadians surface angle there [rad]
 * @param alignment what comes into line
 */
public record TravelLimit(double servoRadians, double surfaceRadians, Alignment alignment) {}
