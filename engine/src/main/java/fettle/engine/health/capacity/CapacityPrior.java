package fettle.engine.health.capacity;

import fettle.engine.pack.Pack;

/**
 * What is believed of capacity before any evidence.
 *
 * @param coulombs the belief [C], &gt; 0
 * @param deviation one standard deviation [C], &gt; 0
 */
public record CapacityPrior(double coulombs, double deviation) {
    /** A label promises up to its cell's first day; packs in use hold some tenth less or more. From memory. */
    private static final double LABEL_SHARE_DEVIATION = 0.15;

    /** The label, taken loosely: two good pairs outweigh it. */
    public static CapacityPrior ofLabel(Pack pack) {
        return new CapacityPrior(pack.ratedCapacityCoulombs(), LABEL_SHARE_DEVIATION * pack.ratedCapacityCoulombs());
    }

    double variance() {
        return deviation * deviation;
    }
}
