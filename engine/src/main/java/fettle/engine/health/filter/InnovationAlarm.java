package fettle.engine.health.filter;

/**
 * Sounds where innovations are larger than the filter thinks possible. Not thread-safe.
 *
 * <p>Formula: mean of innovation² over its variance, remembered over {@value #MEMORY_SECONDS} s, each term held to 25; about 1
 * for a cell that behaves, alarm above {@value #LOUD}.
 */
final class InnovationAlarm {
    /** Slow error of the circuit that counts as misbehaviour, in its own usual deviations. */
    static final double SLOW_DEVIATIONS = 5;

    private static final double MEMORY_SECONDS = 20;
    private static final double LOUD = 6; // squared deviations: the model's own tails stay below on measured profiles
    private static final double MOST = 25;

    private double mean = 1;

    void take(double stepSeconds, double innovation, double variance) {
        double share = 1 - Math.exp(-stepSeconds / MEMORY_SECONDS);
        mean += share * (Math.min(MOST, innovation * innovation / variance) - mean);
    }

    boolean sounds() {
        return mean > LOUD;
    }
}
