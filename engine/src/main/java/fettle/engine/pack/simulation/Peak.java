package fettle.engine.pack.simulation;

/**
 * An extreme and when it was first reached.
 *
 * @param value the extreme, SI
 * @param seconds when [s from the start of the protocol]
 */
public record Peak(double value, double seconds) {}
