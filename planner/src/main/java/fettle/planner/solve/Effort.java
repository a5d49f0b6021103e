package fettle.planner.solve;

/**
 * How long to search.
 *
 * @param seconds wall time at most [s]
 * @param rounds rounds at most, of improving and of bounding; with one thread a search ended by rounds is repeatable
 * @param threads 1, or 2 to bound beside improving
 */
public record Effort(double seconds, long rounds, int threads) {
    /** Two threads for so many seconds. */
    public static Effort seconds(double seconds) {
        return new Effort(seconds, Long.MAX_VALUE, 2);
    }

    /** One thread for so many rounds, whatever the time. */
    public static Effort rounds(long rounds) {
        return new Effort(Double.MAX_VALUE, rounds, 1);
    }
}
