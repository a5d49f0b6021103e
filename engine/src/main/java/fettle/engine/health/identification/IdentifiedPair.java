package fettle.engine.health.identification;

import fettle.engine.units.Estimate;

/**
 * One resistor-capacitor pair found in a log.
 *
 * @param ohms resistance at the cell's own temperature [Ω]
 * @param seconds time constant [s]
 */
public record IdentifiedPair(Estimate ohms, Estimate seconds) {}
