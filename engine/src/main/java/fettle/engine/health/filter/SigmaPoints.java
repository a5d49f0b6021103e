package fettle.engine.health.filter;

import java.util.Arrays;

/**
 * Mean and covariance of a small state, and the points that stand for them. Not thread-safe; no allocation per step.
 *
 * <p>Formula: points m, m ± √n·(columns of the Cholesky factor), all of weight 1/(2n): the third-degree cubature rule, a
 * sigma-point set whose weights are never negative.
 *
 * @see "I. Arasaratnam, S. Haykin, Cubature Kalman filters, IEEE Trans. Automatic Control 54 (2009) 1254-1269"
 */
final class SigmaPoints {
    private static final double LEAST_VARIANCE = 1e-18;

    private final int size;
    final double[] mean;
    final double[][] covariance;
    private final double[][] root;
    private final double[][] points;
    private final double[] cross;

    SigmaPoints(double[] mean, double[] deviations) {
        this.size = mean.length;
        this.mean = mean.clone();
        this.covariance = new double[size][size];
        this.root = new double[size][size];
        this.points = new double[2 * size][size];
        this.cross = new double[size];
        for (int i = 0; i < size; i++) {
            covariance[i][i] = deviations[i] * deviations[i];
        }
    }

    /** What a state would read. */
    interface Reading {
        double of(double[] state);
    }

    /** Spreads the points by the present mean and covariance. */
    private void spread() {
        double reach = Math.sqrt(size);
        for (int j = 0; j < size; j++) {
            for (int i = j; i < size; i++) {
                double sum = covariance[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= root[i][k] * root[j][k];
                }
                root[i][j] = i == j ? Math.sqrt(Math.max(LEAST_VARIANCE, sum)) : sum / root[j][j];
            }
        }
        for (int j = 0; j < size; j++) {
            for (int i = 0; i < size; i++) {
                double away = i < j ? 0 : reach * root[i][j];
                points[j][i] = mean[i] + away;
                points[size + j][i] = mean[i] - away;
            }
        }
    }

    /**
     * Takes in a reading.
     *
     * @param innovation room made by {@link #room}; its first two places get the innovation and its variance
     */
    void update(Reading reading, double observed, double variance, double[] innovation) {
        spread();
        double expected = 0;
        for (int p = 0; p < 2 * size; p++) {
            innovation[2 + p] = reading.of(points[p]);
            expected += innovation[2 + p] / (2 * size);
        }
        double total = variance;
        Arrays.fill(cross, 0);
        for (int p = 0; p < 2 * size; p++) {
            double away = innovation[2 + p] - expected;
            total += away * away / (2 * size);
            for (int i = 0; i < size; i++) {
                cross[i] += away * (points[p][i] - mean[i]) / (2 * size);
            }
        }
        double surprise = observed - expected;
        for (int i = 0; i < size; i++) {
            mean[i] += cross[i] / total * surprise;
            for (int j = 0; j < size; j++) {
                covariance[i][j] -= cross[i] * cross[j] / total;
            }
        }
        innovation[0] = surprise;
        innovation[1] = total;
    }

    /** Linear step of one state: m → stays·m + shift, its variance grown by added. */
    void step(int state, double stays, double shift, double added) {
        mean[state] = stays * mean[state] + shift;
        for (int i = 0; i < size; i++) {
            covariance[state][i] *= stays;
            covariance[i][state] *= stays;
        }
        covariance[state][state] += added;
    }

    /** Room for what all points would read, made once. */
    double[] room() {
        return new double[2 + 2 * size];
    }
}
