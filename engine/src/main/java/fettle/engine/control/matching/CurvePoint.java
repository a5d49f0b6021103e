package fettle.engine.control.matching;

/**
 * One point of a channel's curve.
 *
 * @param stick place of the stick, −1 (trailing edge down) … 1 (up)
 * @param firstSeconds pulse of the first surface [s]
 * @param secondSeconds pulse of the second surface [s]
 * @param surfaceRadians angle of both there [rad]
 */
public record CurvePoint(double stick, double firstSeconds, double secondSeconds, double surfaceRadians) {}
