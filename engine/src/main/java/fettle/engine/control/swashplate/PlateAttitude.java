package fettle.engine.control.swashplate;

/**
 * Where the plate stands.
 *
 * @param heightMetres up from its middle [m]
 * @param forwardRadians tilt with the nose side down [rad]
 * @param rightRadians tilt with the right side down [rad]
 */
public record PlateAttitude(double heightMetres, double forwardRadians, double rightRadians) {
    public static final PlateAttitude LEVEL = new PlateAttitude(0, 0, 0);

    /** The plate as three numbers in one order: height, slope forward, slope right. */
    double[] slopes() {
        return new double[] {heightMetres, Math.tan(forwardRadians), Math.tan(rightRadians)};
    }

    static PlateAttitude ofSlopes(double[] slopes) {
        return new PlateAttitude(slopes[0], Math.atan(slopes[1]), Math.atan(slopes[2]));
    }
}
