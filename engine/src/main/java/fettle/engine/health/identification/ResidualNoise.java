package fettle.engine.health.identification;

/**
 * What the residuals of a fit look like: a white part and a part correlated over a time.
 *
 * <p>Formula: cov(rₜ, rₛ) = white·[t = s] + slow·exp(−|t − s|/T). White, slow and T are those under which the
 * residuals are most likely (normal law), slow raised by what the fit swallowed of it. Effective count nₑ = n·cov(0) / Σ over lags.
 *
 * @param whiteVariance variance of the part without memory [V²], ≥ 0
 * @param slowVariance variance of the part with memory [V²], ≥ 0
 * @param memorySeconds T [s], &gt; 0
 * @param effectiveSamples independent readings the rows are worth, 1 … rows
 */
record ResidualNoise(double whiteVariance, double slowVariance, double memorySeconds, double effectiveSamples) {
    private static final double LEAST_RATIO = 0.02; // of slow over white: below, the search has nothing to climb
    private static final double LEAST_VARIANCE = 1e-14; // 0.1 µV: below any meter

    double variance() {
        return whiteVariance + slowVariance;
    }

    /** The noise under which the residuals are most likely, as they are; rows of weight 0 are not looked at. */
    static ResidualNoise of(LoadWindow window, double[] residual, double[] weights) {
        double[][] none = {};
        double[] found = new NoiseSearch(window, residual, weights, none).best(window.durationSeconds());
        return of(window, residual, weights, none, found);
    }

    /**
     * The same when columns could have explained some of it.
     *
     * @param columns what the fit could have explained
     * @param first what it looks like when they are left aside: where the search begins
     */
    static ResidualNoise of(
            LoadWindow window, double[] residual, double[] weights, double[][] columns, ResidualNoise first) {
        double ratio = Math.max(LEAST_RATIO, first.slowVariance / Math.max(LEAST_VARIANCE, first.whiteVariance));
        double[] from = {Math.log(first.memorySeconds), Math.log(ratio)};
        double[] found = new NoiseSearch(window, residual, weights, columns).bestFrom(from, window.durationSeconds());
        return of(window, residual, weights, columns, found);
    }

    private static ResidualNoise of(
            LoadWindow window, double[] residual, double[] weights, double[][] columns, double[] found) {
        double variance = variance(residual, weights);
        double ratio = Math.exp(found[1]);
        double slow = variance * ratio / (1 + ratio);
        double memory = Math.exp(found[0]);
        double decay = Math.exp(-window.durationSeconds() / (window.rows() - 1) / memory);
        double inflation = 1 + 2 * slow / variance * decay / (1 - decay);
        double effective = Math.max(1, window.rows() / inflation);
        double swallowed = effective / Math.max(1, effective - columns.length);
        return new ResidualNoise(variance - slow, slow * swallowed, memory, effective);
    }

    /** Mean square of the residuals of rows that count [V²]. */
    static double variance(double[] residual, double[] weights) {
        double sum = 0;
        int count = 0;
        for (int row = 0; row < residual.length; row++) {
            if (weights[row] > 0) {
                sum += residual[row] * residual[row];
                count++;
            }
        }
        return Math.max(LEAST_VARIANCE, count == 0 ? 0 : sum / count);
    }

    /** Σ over rows t, s of wₜ jₜ cov(t, s) jₛᵀ wₛ: what such noise does to the normal equations. */
    double[][] spread(LoadWindow window, double[][] columns, double[] weights) {
        int size = columns.length;
        double[][] sum = new double[size][size];
        double[] past = new double[size];
        double[] now = new double[size];
        for (int row = 0; row < window.rows(); row++) {
            double decay = row == 0 ? 0 : Math.exp(-(window.seconds(row) - window.seconds(row - 1)) / memorySeconds);
            for (int i = 0; i < size; i++) {
                past[i] = decay * (past[i] + now[i]);
            }
            for (int i = 0; i < size; i++) {
                now[i] = weights[row] * columns[i][row];
            }
            for (int i = 0; i < size; i++) {
                for (int j = 0; j <= i; j++) {
                    sum[i][j] += variance() * now[i] * now[j] + slowVariance * (now[i] * past[j] + now[j] * past[i]);
                }
            }
        }
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < i; j++) {
                sum[j][i] = sum[i][j];
            }
        }
        return sum;
    }
}
