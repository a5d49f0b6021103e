package fettle.engine.control.sweep;

import fettle.engine.units.Estimate;

/**
 * Where a side begins to bind.
 *
 * @param pulseSeconds pulse at which the current begins to rise [s], with ±
 * @param ampsPerSecond slope of the current beyond it, per second of pulse outwards [A/s]
 * @param riseAmps rise from there to the end of the sweep [A]
 */
public record Binding(Estimate pulseSeconds, double ampsPerSecond, double riseAmps) {}
