package fettle.engine.health.identification;

import fettle.engine.cell.RestCurve;
import fettle.engine.units.Estimate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Where to start the fit: separable least squares over a ladder of time constants.
 *
 * <p>For given time constants resistances, start charge and capacity are linear, so one matrix of products over all columns
 * answers every combination. Columns of the load are made once; only those of the rest curve move with the place looked from.
 */
final class StartSearch {
    private static final int SHARED = 3; // columns of R0, start charge and capacity
    private static final double LEAST_RATIO = 3; // pairs closer than this cannot be told apart
    private static final double LEAST_SHARE_OF_R0 = 0.02; // a start below nothing could not move
    private static final double ROW_VARIANCE = 1e-5; // 3 mV, squared: what a circuit usually leaves of a row
    private static final double LARGEST_LOG_MOVE = 0.4; // of capacity, in one look

    private final LoadColumns load;
    private final CellBelief belief;
    private final double start;
    private final double logCapacity;
    private final int taus;
    private final double[][] products;
    private final double[] right;
    private final double squares;

    private StartSearch(LoadColumns load, CellBelief belief, int taus, double start, double logCapacity) {
        this.load = load;
        this.belief = belief;
        this.taus = taus;
        this.start = start;
        this.logCapacity = logCapacity;
        int size = SHARED + taus;
        this.products = new double[size][size];
        this.right = new double[size];
        double[][] byCharge = byCharge();
        fill(byCharge);
        this.squares = load.product(byCharge[2], byCharge[2]);
    }

    /**
     * The best start with so many pairs; none if volts rise with the current.
     *
     * @param taus how many rungs of the ladder may be used
     */
    static Optional<CircuitPoint> best(LoadColumns load, CellBelief belief, int pairs, int taus, Place from) {
        Place place = from;
        for (int look = 1; look < LOOKS; look++) {
            StartSearch search = new StartSearch(load, belief, taus, place.start(), place.logCapacity());
            Optional<CircuitPoint> found = search.best(pairs, Double.NEGATIVE_INFINITY);
            if (found.isPresent()) {
                double start = Math.max(-0.1, Math.min(1.1, found.get().startCharge()));
                place = new Place(start, found.get().logCapacity());
            }
        }
        StartSearch last = new StartSearch(load, belief, taus, place.start(), place.logCapacity());
        return last.best(pairs, 0)
                .or(() -> pairs > 1 ? last.best(pairs - 1, 0).map(last::withIdlePair) : Optional.empty())
                .or(() -> last.best(pairs, Double.NEGATIVE_INFINITY))
                .filter(point -> point.ohms()[0] > 0);
    }

    private static final int LOOKS = 3; // the rest curve bends: each answer is the place of the next look

    /** Where the rest curve is taken as straight. */
    record Place(double start, double logCapacity) {}

    /** All answers about the belief itself, for every time constant of the load's ladder. */
    static StartSearch at(LoadColumns load, CellBelief belief) {
        return new StartSearch(
                load,
                belief,
                load.taus(),
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

    /** Columns of start charge, of log capacity, and what is left of the volts. */
    private double[][] byCharge() {
        double capacity = Math.exp(logCapacity);
        double[] counted = load.counted();
        int rows = counted.length;
        double[][] columns = new double[3][rows];
        double[] charge = new double[rows];
        for (int row = 0; row < rows; row++) {
            charge[row] = start - counted[row] / capacity;
        }
        RestCurve curve = belief.curve();
        curve.fill(charge, columns[2], columns[0]);
        for (int row = 0; row < rows; row++) {
            columns[1][row] = columns[0][row] * counted[row] / capacity;
            columns[2][row] = load.volts()[row] - columns[2][row];
        }
        return columns;
    }

    private void fill(double[][] byCharge) {
        for (int i = 0; i < right.length; i++) {
            boolean ofCharge = i == 1 || i == 2;
            double[] column = ofCharge ? byCharge[i - 1] : load.column(i == 0 ? 0 : i - SHARED + 1);
            right[i] = load.product(column, byCharge[2]);
            for (int j = 0; j <= i; j++) {
                boolean alsoCharge = j == 1 || j == 2;
                if (ofCharge || alsoCharge) {
                    double[] other = alsoCharge ? byCharge[j - 1] : load.column(j == 0 ? 0 : j - SHARED + 1);
                    products[i][j] = load.product(column, other);
                } else {
                    products[i][j] = load.product(i == 0 ? 0 : i - SHARED + 1, j == 0 ? 0 : j - SHARED + 1);
                }
                products[j][i] = products[i][j];
            }
        }
    }

    /** The best combination of so many pairs whose resistances are all above a floor. */
    private Optional<CircuitPoint> best(int pairs, double floorOhms) {
        double least = Double.POSITIVE_INFINITY;
        int[] best = {};
        double[] bestFound = {};
        for (int[] chosen : combinations(pairs)) {
            double[] found = linear(chosen);
            double cost = isAbove(found, floorOhms) ? cost(chosen, found) : Double.POSITIVE_INFINITY;
            if (cost < least) {
                least = cost;
                best = chosen;
                bestFound = found;
            }
        }
        return best.length == 0 ? Optional.empty() : Optional.of(point(best, bestFound));
    }

    /** Where one pair less explains the window without resistances below nothing: the missing one, all but idle. */
    private CircuitPoint withIdlePair(CircuitPoint point) {
        double[] ohms = Arrays.copyOf(point.ohms(), point.ohms().length + 1);
        ohms[ohms.length - 1] = LEAST_SHARE_OF_R0 * ohms[0];
        double[] logTau = Arrays.copyOf(point.logTau(), point.logTau().length + 1);
        double logLongest = Math.log(load.tau(taus - 1));
        double logShortest = Math.log(load.tau(0));
        double at = point.logTau()[0];
        logTau[logTau.length - 1] = 0.5 * (at + (logLongest - at > at - logShortest ? logLongest : logShortest));
        return new CircuitPoint(ohms, logTau, point.startCharge(), point.logCapacity(), point.delaySeconds());
    }

    private static boolean isAbove(double[] found, double floorOhms) {
        for (int i = 0; i < found.length; i++) {
            if (i != 1 && i != 2 && !(found[i] > floorOhms)) {
                return false;
            }
        }
        return true;
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
        return SmallSystem.solve(normal, target);
    }

    private void believe(double[][] normal, double[] target, int at, double precision, double away) {
        double weight = ROW_VARIANCE / load.stride() * precision;
        normal[at][at] += weight;
        target[at] += weight * away;
    }

    private CircuitPoint point(int[] chosen, double[] found) {
        double[] ohms = new double[chosen.length + 1];
        double[] logTau = new double[chosen.length];
        ohms[0] = found[0];
        for (int pair = 0; pair < chosen.length; pair++) {
            ohms[pair + 1] = Math.max(LEAST_SHARE_OF_R0 * ohms[0], found[SHARED + pair]);
            logTau[pair] = Math.log(load.tau(chosen[pair]));
        }
        double move = Math.max(-LARGEST_LOG_MOVE, Math.min(LARGEST_LOG_MOVE, found[2]));
        return new CircuitPoint(ohms, logTau, start + found[1], logCapacity + move, load.delaySeconds());
    }

    private List<int[]> combinations(int pairs) {
        List<int[]> all = new ArrayList<>();
        for (int i = 0; i < taus; i++) {
            if (pairs == 1) {
                all.add(new int[] {i});
            }
            for (int j = i + 1; pairs == 2 && j < taus; j++) {
                if (load.tau(j) / load.tau(i) >= LEAST_RATIO) {
                    all.add(new int[] {i, j});
                }
            }
        }
        return all;
    }

    static double relative(Estimate estimate) {
        return estimate.standardDeviation() / estimate.value();
    }

    private static double square(double value) {
        return value * value;
    }
}
