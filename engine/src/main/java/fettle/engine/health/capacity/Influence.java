package fettle.engine.health.capacity;

/**
 * What one pair adds to the capacity.
 *
 * @param pair the evidence
 * @param share its share of all information, label included, 0 … 1
 * @param pullCoulombs how far the answer would move if it were left out, answer less that [C]
 * @param deviations how far it lies from the answer, in its own standard deviations
 * @param outlier true beyond {@link CapacityEstimator#OUTLIER_DEVIATIONS}
 */
public record Influence(CapacityPair pair, double share, double pullCoulombs, double deviations, boolean outlier) {}
