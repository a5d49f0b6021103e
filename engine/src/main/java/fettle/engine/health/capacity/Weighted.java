package fettle.engine.health.capacity;

/** A pair with the weight its squared error gets, ≥ 0: memory times robustness. */
record Weighted(CapacityPair pair, double weight) {
    /** Variance of {@code y − Q·x} [C²] at a capacity. */
    double variance(double capacityCoulombs) {
        double fromChange = capacityCoulombs * pair.changeDeviation();
        return fromChange * fromChange + pair.coulombsDeviation() * pair.coulombsDeviation();
    }

    /** {@code y − Q·x} in its own standard deviations. */
    double standardised(double capacityCoulombs) {
        return (pair.coulombs() - capacityCoulombs * pair.changeFraction()) / Math.sqrt(variance(capacityCoulombs));
    }
}
