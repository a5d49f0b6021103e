package fettle.engine.control.setup;

/**
 * One rate of a surface.
 *
 * @param name as the transmitter calls it, e.g. {@code low}
 * @param upRadians throw up, or to the right [rad], ≥ 0
 * @param downRadians throw down, or to the left [rad], ≥ 0
 */
public record Rate(String name, double upRadians, double downRadians) {}
