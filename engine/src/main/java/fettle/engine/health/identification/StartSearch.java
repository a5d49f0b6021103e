package fettle.engine.health.identification;

import fettle.engine.units.Estimate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.jspecify.annotations.Nullable;

/**
 * Where to start the fit: separable least squares over a ladder of time constants.
 *
 * <p>For given time constants resistances, start charge and capacity are linear, so one matrix of products over all columns
 * answers every combination.
 */
final class StartSearch {
    private static final double LADDER = 1.9;
    private static final double LEAST_RATIO = 3; // pairs closer than this cannot be told apart
    private static final int MOST_ROWS = 3000; // products are taken from about so many rows
    private static final int SHARED = 3; // columns of R0, start charge and capacity
    private static final int LOOKS = 3;
    private static final double LONGEST_SHARE = 0.7; // of the window
    private static final double SHORT_SHARE = 0.1;
    private static final double[] AWAY = {0, 1.5, -1}; // deviations of capacity from which to look
    private static final double TIGHT = 0.07; // a belief in capacity this good needs one look only
    private static final double LEAST_SHARE_OF_R0 = 0.02; // a start below nothing could not move
    private static final double ROW_VARIANCE = 1e-5; // 3 mV, squared: what a circuit usually leaves of a row
    private static final double LARGEST_LOG_MOVE = 0.4; // of capacity, in one look

    private final double[] taus;
    private final CellBelief belief;
    private final double start;
    private final double logCapacity;
    private final double[][] products;
    private final double[] right;
    private final double weightOfPrior;
    private double squares;

    private StartSearch(
            LoadWindow window,
            CellBelief belief,
            double delaySeconds,
            double[] weights,
            double[] taus,
            double start,
            double logCapacity) {
        this.belief = belief;
        this.start = start;
        this.logCapacity = logCapacity;
        this.taus = taus;
        int stride = Math.max(1, window.rows() / MOST_ROWS);
        this.weightOfPrior = ROW_VARIANCE / stride;
        int size = SHARED + taus.length;
        this.products = new double[size][size];
        this.right = new double[size];
        double[] amps = window.ampsDelayed(delaySeconds);
        multiply(window, amps, columns(window, amps), weights, stride);
    }

    /**
     * Starts with so many pairs; none if volts rise with the current.
     *
     * <p>The rest curve bends, so the answer for start charge and capacity becomes the place of the next look; a loose belief
     * is also tried from a larger and a smaller
     * capacity, and with quick pairs only: a slow pair and a wrong capacity look alike.
     */
    static List<CircuitPoint> starts(
            LoadWindow window, CellBelief belief, double delaySeconds, double[] weights, int pairs) {
        boolean loose = relative(belief.capacityCoulombs()) > TIGHT;
        List<CircuitPoint> starts = loose
                ? starts(window, belief, delaySeconds, weights, pairs, AWAY)
                : starts(window, belief, delaySeconds, weights, pairs, new double[] {0});
        return starts.isEmpty() && !loose ? starts(window, belief, delaySeconds, weights, pairs, AWAY) : starts;
    }

    private static List<CircuitPoint> starts(
            LoadWindow window, CellBelief belief, double delaySeconds, double[] weights, int pairs, double[] away) {
        double logBelieved = Math.log(belief.capacityCoulombs().value());
        double deviation = relative(belief.capacityCoulombs());
        double[] longest = away.length > 1 ? new double[] {LONGEST_SHARE, SHORT_SHARE} : new double[] {LONGEST_SHARE};
        List<CircuitPoint> starts = new ArrayList<>();
        for (double share : longest) {
            double[] taus = ladder(window, share);
            for (double deviations : away) {
                bestFrom(window, belief, delaySeconds, weights, pairs, taus, logBelieved + deviations * deviation)
                        .ifPresent(point -> starts.add(point.withDelay(delaySeconds)));
            }
        }
        return starts;
    }

    /** All answers about the belief itself, for given time constants. */
    static StartSearch at(LoadWindow window, CellBelief belief, double delaySeconds, double[] weights, double[] taus) {
        return new StartSearch(
                window,
                belief,
                delaySeconds,
                weights,
                taus,
                belief.startCharge().value(),
                Math.log(belief.capacityCoulombs().value()));
    }

    /** Weighted squares left by a choice of time constants [V²]. */
    double cost(int[] chosen) {
        return cost(chosen, linear(chosen));
    }

    /** The answer for a choice of time constants. */
    CircuitPoint point(int[] chosen) {
        return point(chosen, linear(chosen));
    }

    private static Optional<CircuitPoint> bestFrom(
            LoadWindow window,
            CellBelief belief,
            double delaySeconds,
            double[] weights,
            int pairs,
            double[] taus,
            double firstLogCapacity) {
        double start = belief.startCharge().value();
        double logCapacity = firstLogCapacity;
        for (int look = 1; look < LOOKS; look++) {
            StartSearch search = new StartSearch(window, belief, delaySeconds, weights, taus, start, logCapacity);
            Optional<CircuitPoint> found = search.best(pairs, Double.NEGATIVE_INFINITY);
            if (found.isPresent()) {
                start = Math.max(-0.1, Math.min(1.1, found.get().startCharge()));
                logCapacity = found.get().logCapacity();
            }
        }
        StartSearch last = new StartSearch(window, belief, delaySeconds, weights, taus, start, logCapacity);
        return last.best(pairs, 0)
                .or(() -> pairs > 1 ? last.best(pairs - 1, 0).map(last::withIdlePair) : Optional.empty())
                .or(() -> last.best(pairs, Double.NEGATIVE_INFINITY))
                .filter(point -> point.ohms()[0] > 0);
    }

    private double[][] columns(LoadWindow window, double[] amps) {
        double capacity = Math.exp(logCapacity);
        double[] counted = new CircuitModel(window, belief.curve()).counted(amps);
        double[][] columns = new double[right.length + 1][];
        columns[0] = negative(amps);
        columns[1] = new double[amps.length];
        columns[2] = new double[amps.length];
        double[] target = new double[amps.length];
        for (int row = 0; row < amps.length; row++) {
            double charge = start - counted[row] / capacity;
            columns[1][row] = belief.curve().slopeVolts(charge);
            columns[2][row] = columns[1][row] * counted[row] / capacity;
            target[row] = window.volts(row) - belief.curve().volts(charge);
        }
        for (int k = 0; k < taus.length; k++) {
            columns[SHARED + k] = negative(Polarisation.of(window, amps, taus[k]));
        }
        columns[right.length] = target;
        return columns;
    }

    private void multiply(LoadWindow window, double[] amps, double[][] columns, double[] weights, int stride) {
        double[] target = columns[right.length];
        for (int row = 0; row < amps.length; row += stride) {
            squares += weights[row] * target[row] * target[row];
            for (int i = 0; i < right.length; i++) {
                double weighted = weights[row] * columns[i][row];
                right[i] += weighted * target[row];
                for (int j = 0; j <= i; j++) {
                    products[i][j] += weighted * columns[j][row];
                    products[j][i] = products[i][j];
                }
            }
        }
    }

    /** The best combination of so many pairs whose resistances are all above a floor. */
    private Optional<CircuitPoint> best(int pairs, double floorOhms) {
        double least = Double.POSITIVE_INFINITY;
        CircuitPoint best = null;
        for (int[] chosen : combinations(pairs)) {
            Solved solved = solve(chosen, floorOhms);
            if (solved != null && solved.cost < least) {
                least = solved.cost;
                best = solved.point;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Where one pair less explains the window without resistances below nothing: the missing one, all but idle. */
    private CircuitPoint withIdlePair(CircuitPoint point) {
        double[] ohms = Arrays.copyOf(point.ohms(), point.ohms().length + 1);
        ohms[ohms.length - 1] = LEAST_SHARE_OF_R0 * ohms[0];
        double[] logTau = Arrays.copyOf(point.logTau(), point.logTau().length + 1);
        double logLongest = Math.log(taus[taus.length - 1]);
        double logShortest = Math.log(taus[0]);
        double at = point.logTau()[0];
        logTau[logTau.length - 1] = 0.5 * (at + (logLongest - at > at - logShortest ? logLongest : logShortest));
        return new CircuitPoint(ohms, logTau, point.startCharge(), point.logCapacity(), 0);
    }

    private record Solved(CircuitPoint point, double cost) {}

    private @Nullable Solved solve(int[] chosen, double floorOhms) {
        double[] found = linear(chosen);
        for (int i = 0; i < found.length; i++) {
            if (i != 1 && i != 2 && !(found[i] > floorOhms)) {
                return null;
            }
        }
        return new Solved(point(chosen, found), cost(chosen, found));
    }

    private double cost(int[] chosen, double[] found) {
        double cost = squares;
        for (int i = 0; i < found.length; i++) {
            cost -= found[i] * right[column(chosen, i)];
        }
        return cost;
    }

    private static int column(int[] chosen, int i) {
        return i < SHARED ? i : SHARED + chosen[i - SHARED];
    }

    /** R0, change of start charge, change of log capacity, then a resistance per pair. */
    private double[] linear(int[] chosen) {
        int size = SHARED + chosen.length;
        double[][] normal = new double[size][size];
        double[] target = new double[size];
        for (int i = 0; i < size; i++) {
            target[i] = right[column(chosen, i)];
            for (int j = 0; j < size; j++) {
                normal[i][j] = products[column(chosen, i)][column(chosen, j)];
            }
            normal[i][i] *= 1 + 1e-12;
        }
        believe(
                normal,
                target,
                1,
                1 / square(belief.startCharge().standardDeviation()),
                belief.startCharge().value() - start);
        double logBelieved = Math.log(belief.capacityCoulombs().value());
        believe(normal, target, 2, 1 / square(relative(belief.capacityCoulombs())), logBelieved - logCapacity);
        RealMatrix matrix = new Array2DRowRealMatrix(normal, false);
        return new CholeskyDecomposition(matrix, Double.POSITIVE_INFINITY, 0)
                .getSolver()
                .solve(new ArrayRealVector(target))
                .toArray();
    }

    private void believe(double[][] normal, double[] target, int at, double precision, double away) {
        normal[at][at] += weightOfPrior * precision;
        target[at] += weightOfPrior * precision * away;
    }

    private CircuitPoint point(int[] chosen, double[] found) {
        double[] ohms = new double[chosen.length + 1];
        double[] logTau = new double[chosen.length];
        ohms[0] = found[0];
        for (int pair = 0; pair < chosen.length; pair++) {
            ohms[pair + 1] = Math.max(LEAST_SHARE_OF_R0 * ohms[0], found[SHARED + pair]);
            logTau[pair] = Math.log(taus[chosen[pair]]);
        }
        double move = Math.max(-LARGEST_LOG_MOVE, Math.min(LARGEST_LOG_MOVE, found[2]));
        return new CircuitPoint(ohms, logTau, start + found[1], logCapacity + move, 0);
    }

    private List<int[]> combinations(int pairs) {
        List<int[]> all = new ArrayList<>();
        for (int i = 0; i < taus.length; i++) {
            if (pairs == 1) {
                all.add(new int[] {i});
            }
            for (int j = i + 1; pairs == 2 && j < taus.length; j++) {
                if (taus[j] / taus[i] >= LEAST_RATIO) {
                    all.add(new int[] {i, j});
                }
            }
        }
        return all;
    }

    private static double[] ladder(LoadWindow window, double longestShare) {
        double[] rungs = new double[64];
        int count = 0;
        for (double tau = 2 * window.stepSeconds();
                tau < longestShare * window.durationSeconds() && count < 64;
                tau *= LADDER) {
            rungs[count++] = tau;
        }
        return Arrays.copyOf(rungs, count);
    }

    private static double[] negative(double[] values) {
        return Arrays.stream(values).map(value -> -value).toArray();
    }

    private static double relative(Estimate estimate) {
        return estimate.standardDeviation() / estimate.value();
    }

    private static double square(double value) {
        return value * value;
    }
}
