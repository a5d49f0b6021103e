package fettle.engine.control.matching;

/**
 * Difference of two surfaces at one place of the stick.
 *
 * @param stick place of the stick, −1 … 1
 * @param firstRadians angle of the first surface [rad]
 * @param secondRadians angle of the second [rad]
 * @param edgeMetres trailing edge of the second less that of the first [m], each on its own chord
 */
public record Mismatch(double stick, double firstRadians, double secondRadians, double edgeMetres) {
    /** Angle of the second less that of the first [rad]. */
    public double radians() {
        return secondRadians - firstRadians;
    }
}
