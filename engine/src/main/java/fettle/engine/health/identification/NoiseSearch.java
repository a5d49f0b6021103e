package fettle.engine.health.identification;

import java.util.Arrays;

/**
 * The memory of residuals, and how much of their variance has it, by restricted likelihood.
 *
 * <p>Formula: with C the correlation of white plus exponentially correlated noise, the largest of −½ [(n − p) ln RSS + ln|C| +
 * ln|JᵀC⁻¹J|], RSS what is left of the residuals after regression on the columns J under C. Restricting to what the columns
 * cannot explain keeps a fit from hiding the slow noise it has swallowed.
 *
 * @see "H. D. Patterson, R. Thompson, Recovery of inter-block information when block sizes are unequal, Biometrika 58
 *     (1971) 545-554"
 */
final class NoiseSearch {
    private static final int MOST_ROWS = 2000; // of a window: enough to tell the memory within a tenth
    private static final int STRETCH = 250;
    private static final double COARSE = 1.2; // step of the search in natural logarithms
    private static final double FINE = 0.1; // the data tell no finer
    private static final double LARGEST_LOG_RATIO = 4;
    private static final double LONGEST_SHARE = 0.3; // of the window: a longer memory looks like the cell itself
    private static final double SAME_GAP = 1e-6; // gaps alike within this share are one: rounding of time stamps
    private static final double STEADY = 1e-12; // change of the gain below which it has settled
    private static final double LEAST_STEP_SECONDS = 1e-3;
    private static final double LEAST_SQUARES = 1e-14;
    private static final double[][] WAYS = {{1, 0}, {-1, 0}, {0, 1}, {0, -1}};

    private final double[][] rows;
    private final double[] gaps;
    private final double[] mean;

    /** @param columns what the fit could have explained; may have none */
    NoiseSearch(LoadWindow window, double[] residual, double[] weights, double[][] columns) {
        int count = 0;
        for (int row = 0; row < residual.length; row++) {
            count += isLookedAt(row, residual.length) && weights[row] > 0 ? 1 : 0;
        }
        this.rows = new double[count][columns.length + 1];
        this.gaps = new double[count];
        this.mean = new double[columns.length + 1];
        double last = window.seconds(0);
        int at = 0;
        for (int row = 0; row < residual.length; row++) {
            if (isLookedAt(row, residual.length) && weights[row] > 0) {
                gaps[at] = window.seconds(row) - last;
                last = window.seconds(row);
                for (int i = 0; i < columns.length; i++) {
                    rows[at][i] = columns[i][row];
                }
                rows[at++][columns.length] = residual[row];
            }
        }
    }

    /** All rows of a short window; of a long one stretches of neighbours, for a memory shorter than a stride hides from one. */
    private static boolean isLookedAt(int row, int length) {
        int stretches = Math.min(MOST_ROWS, length) / STRETCH;
        int share = stretches == 0 ? 0 : length / stretches;
        return length <= MOST_ROWS || row % share < STRETCH;
    }

    /** Natural logarithms of memory [s] and of slow over white variance. */
    double[] best(double durationSeconds) {
        double step = Math.max(LEAST_STEP_SECONDS, gaps.length > 1 ? gaps[1] : 0);
        double longest = Math.log(LONGEST_SHARE * durationSeconds);
        double[] at = {Math.log(step), -LARGEST_LOG_RATIO};
        double best = Double.NEGATIVE_INFINITY;
        int memories = (int) Math.ceil((longest - Math.log(step)) / COARSE);
        int ratios = (int) LARGEST_LOG_RATIO + 1;
        for (int memory = 0; memory < memories; memory++) {
            double logMemory = Math.log(step) + memory * COARSE;
            for (int ratio = 0; ratio < ratios; ratio++) {
                double logRatio = -LARGEST_LOG_RATIO + 2 * ratio;
                double found = likelihood(logMemory, logRatio);
                if (found > best) {
                    best = found;
                    at = new double[] {logMemory, logRatio};
                }
            }
        }
        return climbed(at, best, longest);
    }

    /** The same, climbing from a place. */
    double[] bestFrom(double[] from, double durationSeconds) {
        double[] at = from.clone();
        return climbed(at, likelihood(at[0], at[1]), Math.log(LONGEST_SHARE * durationSeconds));
    }

    private double[] climbed(double[] at, double from, double longest) {
        double best = from;
        for (double move = COARSE / 2; move > FINE; move /= 2) {
            best = climb(at, best, move, longest);
        }
        return at;
    }

    private double climb(double[] at, double from, double move, double longest) {
        double best = from;
        boolean improved = true;
        while (improved) {
            improved = false;
            for (double[] way : WAYS) {
                double logMemory = Math.min(longest, at[0] + move * way[0]);
                double logRatio = Math.min(LARGEST_LOG_RATIO, at[1] + move * way[1]);
                double found = likelihood(logMemory, logRatio);
                if (found > best + 1e-9) {
                    best = found;
                    at[0] = logMemory;
                    at[1] = logRatio;
                    improved = true;
                }
            }
        }
        return best;
    }

    /** A Kalman filter with the white variance as unit whitens residuals and columns alike. */
    private double likelihood(double logMemory, double logRatio) {
        double memory = Math.exp(logMemory);
        double ratio = Math.exp(logRatio);
        int size = mean.length;
        Arrays.fill(mean, 0);
        double[][] products = new double[size][size];
        double[] surprise = new double[size];
        double spread = ratio;
        double lastGap = Double.NaN;
        double stays = 0;
        double fresh = 0;
        double total = 1;
        double gain = 0;
        double logTotal = 0;
        boolean steady = false;
        double logs = 0;
        for (int row = 0; row < rows.length; row++) {
            if (!(Math.abs(gaps[row] - lastGap) <= SAME_GAP * lastGap)) {
                lastGap = gaps[row];
                stays = Math.exp(-lastGap / memory);
                fresh = ratio * (1 - stays * stays);
                steady = false;
            }
            if (!steady) {
                total = stays * stays * spread + fresh + 1;
                gain = 1 - 1 / total;
                logTotal = Math.log(total);
                steady = Math.abs(gain - spread) < STEADY;
                spread = gain;
            }
            logs += logTotal;
            double[] values = rows[row];
            double share = 1 / total;
            for (int i = 0; i < size; i++) {
                double carried = stays * mean[i];
                surprise[i] = values[i] - carried;
                mean[i] = carried + gain * surprise[i];
            }
            for (int i = 0; i < size; i++) {
                double scaled = share * surprise[i];
                double[] line = products[i];
                for (int j = 0; j <= i; j++) {
                    line[j] += scaled * surprise[j];
                }
            }
        }
        return -0.5 * (restricted(products) + logs);
    }

    /** (n − p) ln RSS + ln|JᵀC⁻¹J| from the whitened products, columns scaled to 1. */
    private double restricted(double[][] products) {
        int columns = products.length - 1;
        double squares = products[columns][columns];
        double logDeterminant = 0;
        if (columns > 0) {
            double[][] scaled = new double[columns][columns];
            double[] right = new double[columns];
            for (int i = 0; i < columns; i++) {
                double scale = Math.sqrt(products[i][i]);
                logDeterminant += 2 * Math.log(scale);
                right[i] = products[columns][i] / scale;
                for (int j = 0; j <= i; j++) {
                    scaled[i][j] = products[i][j] / scale / Math.sqrt(products[j][j]);
                    scaled[j][i] = scaled[i][j];
                }
                scaled[i][i] += 1e-9;
            }
            double[] answer = SmallSystem.solve(scaled, right.clone());
            for (int i = 0; i < columns; i++) {
                squares -= answer[i] * right[i];
            }
            logDeterminant += SmallSystem.logDeterminant(scaled);
        }
        return (rows.length - columns) * Math.log(Math.max(LEAST_SQUARES, squares)) + logDeterminant;
    }
}
