package fettle.engine.health.identification;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * How much later volts are logged than amps, as a first guess.
 *
 * <p>Formula: the steps of volts are regressed on the steps of current up to {@value #REACH} rows before and after; the delay
 * is the centre of the rows around the largest answer.
 */
final class SensorDelay {
    private static final int REACH = 5;
    private static final double EVEN = 0.25; // rows further from the usual step than this share are left out
    private static final double QUICK_SHARE = 0.1; // loggers often slow down at rest: the quick rows tell
    private static final int MOST_ROWS = 50_000; // enough steps to tell a delay
    private static final double RIDGE = 1e-9;

    private SensorDelay() {}

    /** Delay [s], positive where volts lag; 0 where the current has no steps to tell. */
    static double of(LoadWindow window) {
        int size = 2 * REACH + 1;
        double step = window.stepSeconds(QUICK_SHARE);
        double[][] normal = new double[size][size];
        double[] right = new double[size];
        double[] steps = new double[size];
        int end = Math.min(MOST_ROWS, window.rows() - REACH);
        for (int row = REACH + 1; row < end; row++) {
            if (!isEven(window, row, step)) {
                continue;
            }
            for (int k = 0; k < size; k++) {
                int at = row + REACH - k;
                steps[k] = window.amps(at) - window.amps(at - 1);
            }
            double rise = window.volts(row) - window.volts(row - 1);
            for (int i = 0; i < size; i++) {
                right[i] -= steps[i] * rise;
                for (int j = 0; j < size; j++) {
                    normal[i][j] += steps[i] * steps[j];
                }
            }
        }
        return centre(normal, right, step);
    }

    private static double centre(double[][] normal, double[] right, double step) {
        double trace = 0;
        for (int i = 0; i < right.length; i++) {
            trace += normal[i][i];
        }
        if (trace == 0) {
            return 0;
        }
        for (int i = 0; i < right.length; i++) {
            normal[i][i] += RIDGE * trace;
        }
        RealMatrix matrix = new Array2DRowRealMatrix(normal, false);
        double[] answer = new CholeskyDecomposition(matrix, 1e-9 * trace, 0)
                .getSolver()
                .solve(new ArrayRealVector(right, false))
                .toArray();
        int largest = 0;
        for (int k = 1; k < answer.length; k++) {
            largest = answer[k] > answer[largest] ? k : largest;
        }
        double weight = 0;
        double sum = 0;
        for (int k = Math.max(0, largest - 1); k <= Math.min(answer.length - 1, largest + 2); k++) {
            double share = Math.max(0, answer[k]);
            weight += share;
            sum += share * (k - REACH);
        }
        return weight > 0 ? sum / weight * step : 0;
    }

    private static boolean isEven(LoadWindow window, int row, double step) {
        double span = window.seconds(row + REACH) - window.seconds(row - REACH - 1);
        return Math.abs(span - (2 * REACH + 1) * step) < EVEN * step * (2 * REACH + 1);
    }
}
