package fettle.engine.health.identification;

import java.util.Arrays;

/**
 * Rows that jump out of their neighbours: a bad contact, a radio glitch, a filter still settling.
 *
 * <p>A residual further than {@value #DEVIATIONS} robust deviations from the median of the five around it gets weight 0. The
 * robust deviation is 1.4826 times the median of those distances over all rows (Hampel's identifier).
 */
final class Spikes {
    private static final double DEVIATIONS = 6;
    private static final double NORMAL = 1.4826; // median absolute deviation to standard deviation of a normal law
    private static final int HALF = 2;
    private static final int MEDIAN_ROWS = 2000; // tell the median within a fiftieth
    private static final double RESOLUTION_VOLTS = 2e-4; // no meter of the trade reads finer; guards constant residuals

    private Spikes() {}

    /** True where a row is a spike. */
    static boolean[] in(double[] residual) {
        double[] distance = new double[residual.length];
        double[] around = new double[2 * HALF + 1];
        for (int row = 0; row < residual.length; row++) {
            int from = Math.max(0, Math.min(residual.length - around.length, row - HALF));
            distance[row] = Math.abs(residual[row] - medianOfFive(residual, from, around));
        }
        double limit = DEVIATIONS * Math.max(RESOLUTION_VOLTS, NORMAL * median(distance));
        boolean[] spikes = new boolean[residual.length];
        for (int row = 0; row < residual.length; row++) {
            spikes[row] = distance[row] > limit;
        }
        return spikes;
    }

    private static double medianOfFive(double[] residual, int from, double[] sorted) {
        for (int i = 0; i < sorted.length; i++) {
            double value = residual[from + i];
            int at = i;
            while (at > 0 && sorted[at - 1] > value) {
                sorted[at] = sorted[at - 1];
                at--;
            }
            sorted[at] = value;
        }
        return sorted[HALF];
    }

    /** Of long windows from evenly spread rows. */
    private static double median(double[] distance) {
        int stride = Math.max(1, distance.length / MEDIAN_ROWS);
        double[] sorted = new double[distance.length / stride];
        for (int at = 0; at < sorted.length; at++) {
            sorted[at] = distance[at * stride];
        }
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
