package fettle.engine.control.sweep;

/**
 * Current at the two ends of a sweep, each the median of its last readings.
 *
 * @param lowAmps at the shortest pulses [A]
 * @param highAmps at the longest pulses [A]
 * @param centreAmps around the lightest stretch of the free travel [A]
 */
public record EndLoads(double lowAmps, double highAmps, double centreAmps) {
    /** What the lower end takes more than the centre [A], ≥ 0. */
    public double lowExcessAmps() {
        return Math.max(0, lowAmps - centreAmps);
    }

    /** What the upper end takes more than the centre [A], ≥ 0. */
    public double highExcessAmps() {
        return Math.max(0, highAmps - centreAmps);
    }

    public double largestAmps() {
        return Math.max(lowAmps, highAmps);
    }
}
