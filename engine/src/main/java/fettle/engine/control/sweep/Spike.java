package fettle.engine.control.sweep;

/**
 * A reading, or two side by side, far above or below both neighbourhoods.
 *
 * @param pulseSeconds where [s]
 * @param amps how far above its neighbours [A]; negative if below
 * @param passes in how many passes it was seen there
 */
public record Spike(double pulseSeconds, double amps, int passes) {}
