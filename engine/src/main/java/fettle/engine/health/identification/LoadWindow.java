package fettle.engine.health.identification;

import fettle.engine.units.Faults;
import java.util.Arrays;

/**
 * A stretch of a log over which a cell's resistance may be taken as one: volts and amps against time. Immutable.
 *
 * <p>Current runs straight from sample to sample.
 */
public final class LoadWindow {
    static final int LEAST_ROWS = 40;
    private static final int MOST_STEPS = 4000; // enough to tell a quantile within a hundredth of the rows
    private static final double STEP_SHARE = 0.2; // an edge of a load, not its ripple
    private static final double LOWEST_KELVINS = 233.15;
    private static final double HIGHEST_KELVINS = 373.15;

    private final double[] seconds;
    private final double[] amps;
    private final double[] volts;
    private final double kelvins;
    private final double[] sortedSteps;

    private LoadWindow(double[] seconds, double[] amps, double[] volts, double kelvins) {
        this.seconds = seconds;
        this.amps = amps;
        this.volts = volts;
        this.kelvins = kelvins;
        this.sortedSteps = sortedSteps(seconds);
    }

    /**
     * A window of a log.
     *
     * @param seconds time [s], strictly rising, at least {@value #LEAST_ROWS} rows
     * @param amps current [A], positive when discharging
     * @param volts volts of one cell [V]
     * @param kelvins mean temperature of the cell [K], −40 … 100 °C
     * @throws fettle.engine.units.InputException naming the first row that cannot be used
     */
    public static LoadWindow of(double[] seconds, double[] amps, double[] volts, double kelvins) {
        Faults faults = new Faults();
        if (seconds.length < LEAST_ROWS || amps.length != seconds.length || volts.length != seconds.length) {
            faults.add(
                    "rows",
                    "the window has " + seconds.length + " rows of time, " + amps.length + " of current and "
                            + volts.length + " of volts; expected at least " + LEAST_ROWS
                            + " of each. Take a longer stretch of the log.");
        }
        faults.refuse();
        for (int row = 0; row < seconds.length; row++) {
            boolean finite = Double.isFinite(seconds[row] + amps[row] + volts[row]);
            if (!finite || (row > 0 && !(seconds[row] > seconds[row - 1]))) {
                faults.add(
                        "rows",
                        "row " + (row + 1) + " is " + seconds[row] + " s, " + amps[row] + " A, " + volts[row]
                                + " V; expected numbers and time to rise. Sort the log and leave out rows without"
                                + " volts or amps.");
                break;
            }
        }
        if (!(kelvins >= LOWEST_KELVINS && kelvins <= HIGHEST_KELVINS)) {
            faults.add("temperature", "temperature is " + kelvins + " K; expected -40 to 100 °C.");
        }
        faults.refuse();
        return new LoadWindow(seconds.clone(), amps.clone(), volts.clone(), kelvins);
    }

    int rows() {
        return seconds.length;
    }

    double seconds(int row) {
        return seconds[row];
    }

    double volts(int row) {
        return volts[row];
    }

    double amps(int row) {
        return amps[row];
    }

    /** Time from first to last row [s]. */
    public double durationSeconds() {
        return seconds[seconds.length - 1] - seconds[0];
    }

    /** Mean temperature of the cell [K]. */
    public double kelvins() {
        return kelvins;
    }

    /** Median time between rows [s]. */
    double stepSeconds() {
        return stepSeconds(0.5);
    }

    /** Time between rows [s] that a share of the rows is quicker than; of long windows from evenly spread rows. */
    double stepSeconds(double share) {
        return sortedSteps[(int) (share * (sortedSteps.length - 1))];
    }

    private static double[] sortedSteps(double[] seconds) {
        int stride = Math.max(1, (seconds.length - 1) / MOST_STEPS);
        double[] steps = new double[(seconds.length - 1) / stride];
        for (int at = 0; at < steps.length; at++) {
            steps[at] = seconds[at * stride + 1] - seconds[at * stride];
        }
        Arrays.sort(steps);
        return steps;
    }

    /** How often the current jumps by at least {@value #STEP_SHARE} of its whole range within a row. */
    int loadSteps() {
        double most = amps[0];
        double least = amps[0];
        for (double current : amps) {
            most = Math.max(most, current);
            least = Math.min(least, current);
        }
        double range = most - least;
        int steps = 0;
        for (int row = 1; row < rows(); row++) {
            steps += Math.abs(amps[row] - amps[row - 1]) > STEP_SHARE * range ? 1 : 0;
        }
        return steps;
    }

    /** Rows from one (included) to another (left out), as a window of their own. */
    public LoadWindow part(int from, int to) {
        return of(
                Arrays.copyOfRange(seconds, from, to),
                Arrays.copyOfRange(amps, from, to),
                Arrays.copyOfRange(volts, from, to),
                kelvins);
    }

    /** Means of so many neighbouring rows each, the current read later by a delay; a rest of fewer rows is left out. */
    LoadWindow averaged(int size, double delaySeconds) {
        double[] delayed = ampsDelayed(delaySeconds);
        int blocks = rows() / size;
        double[][] means = new double[3][blocks];
        for (int block = 0; block < blocks; block++) {
            for (int row = block * size; row < (block + 1) * size; row++) {
                means[0][block] += seconds[row] / size;
                means[1][block] += delayed[row] / size;
                means[2][block] += volts[row] / size;
            }
        }
        return new LoadWindow(means[0], means[1], means[2], kelvins);
    }

    /** The current as the volts saw it: read later by a delay [A]. */
    double[] ampsDelayed(double delaySeconds) {
        if (delaySeconds == 0) {
            return amps.clone();
        }
        double[] delayed = new double[rows()];
        int at = 0;
        for (int row = 0; row < rows(); row++) {
            double when = seconds[row] - delaySeconds;
            while (at < rows() - 2 && seconds[at + 1] <= when) {
                at++;
            }
            while (at > 0 && seconds[at] > when) {
                at--;
            }
            double share = (when - seconds[at]) / (seconds[at + 1] - seconds[at]);
            delayed[row] = amps[at] + Math.max(0, Math.min(1, share)) * (amps[at + 1] - amps[at]);
        }
        return delayed;
    }

    /** Weight of each row: the time it stands for, at most twice the median of them, mean 1. */
    double[] timeWeights(double mostSeconds) {
        double[] weights = new double[rows()];
        double sum = 0;
        for (int row = 0; row < rows(); row++) {
            double before = row == 0 ? seconds[0] : seconds[row - 1];
            double after = row == rows() - 1 ? seconds[row] : seconds[row + 1];
            weights[row] = Math.min(mostSeconds, 0.5 * (after - before));
            sum += weights[row];
        }
        for (int row = 0; row < rows(); row++) {
            weights[row] *= rows() / sum;
        }
        return weights;
    }
}
