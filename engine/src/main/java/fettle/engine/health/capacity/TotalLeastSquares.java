package fettle.engine.health.capacity;

import fettle.engine.units.InputException;
import java.util.List;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Capacity by weighted total least squares: errors in both members of each pair.
 *
 * <p>Formula: Q least in χ²(Q) = Σ w (y − Q x)² / (Q² sx² + sy²); σ = √(2 / χ²″). The interval at n
 * deviations is where χ² has risen by n² on either side.
 *
 * @see "G. L. Plett, J. Power Sources 196 (2011) 2319-2331; derivatives re-derived in battery/capacity-estimation.md"
 */
final class TotalLeastSquares {
    /** The root is sought between these shares of the start and polished to a part in 10¹². */
    private static final double LEAST_SHARE = 0.2;

    private static final double MOST_SHARE = 5;
    private static final int SCAN_STEPS = 60;
    private static final double RELATIVE_ACCURACY = 1e-12;
    private static final int MOST_EVALUATIONS = 200;

    private final List<Weighted> pairs;
    private final double capacity;
    private final double least;

    private TotalLeastSquares(List<Weighted> pairs) {
        this.pairs = pairs;
        this.capacity = minimum(start());
        this.least = cost(capacity);
    }

    /** Fits at least one pair. */
    static TotalLeastSquares fit(List<Weighted> pairs) {
        if (pairs.isEmpty()) {
            throw new InputException(
                    "pairs",
                    "there is no pair of rest charge and ampere-hours. Note a charge with rest volts before and after.");
        }
        return new TotalLeastSquares(pairs);
    }

    double capacityCoulombs() {
        return capacity;
    }

    /** χ² at the minimum. */
    double chiSquared() {
        return least;
    }

    double standardDeviation() {
        return Math.sqrt(2 / curvature(capacity));
    }

    /** Where χ² has risen by deviations², below or above the minimum [C]. */
    double end(Side side, double deviations) {
        double outside = capacity * (side == Side.BELOW ? LEAST_SHARE : MOST_SHARE);
        UnivariateFunction rise = q -> cost(q) - least - deviations * deviations;
        if (rise.value(outside) < 0) {
            return outside;
        }
        double low = Math.min(outside, capacity);
        double high = Math.max(outside, capacity);
        return solver(capacity).solve(MOST_EVALUATIONS, rise, low, high);
    }

    /** How far the minimum would move back without one pair, by one Newton step: answer less the answer without it [C]. */
    double pull(Weighted pair) {
        return -slope(pair, capacity) / (curvature(capacity) - curvature(pair, capacity));
    }

    /** Which end of the interval. */
    enum Side {
        BELOW,
        ABOVE
    }

    /** Weighted least squares with errors in y only: biased low, good enough to start from. */
    private double start() {
        double xx = 0;
        double xy = 0;
        for (Weighted weighted : pairs) {
            CapacityPair pair = weighted.pair();
            double scale = weighted.weight() / (pair.coulombsDeviation() * pair.coulombsDeviation());
            xx += scale * pair.changeFraction() * pair.changeFraction();
            xy += scale * pair.changeFraction() * pair.coulombs();
        }
        return xy / xx;
    }

    private double minimum(double start) {
        double step = Math.pow(MOST_SHARE / LEAST_SHARE, 1.0 / SCAN_STEPS);
        double best = start;
        for (double q = start * LEAST_SHARE; q <= start * MOST_SHARE; q *= step) {
            best = cost(q) < cost(best) ? q : best;
        }
        return solver(best).solve(MOST_EVALUATIONS, this::slope, best / step, best * step);
    }

    private static BracketingNthOrderBrentSolver solver(double scale) {
        return new BracketingNthOrderBrentSolver(RELATIVE_ACCURACY, RELATIVE_ACCURACY * scale, 5);
    }

    private double cost(double q) {
        double sum = 0;
        for (Weighted weighted : pairs) {
            double away = weighted.standardised(q);
            sum += weighted.weight() * away * away;
        }
        return sum;
    }

    private double slope(double q) {
        double sum = 0;
        for (Weighted weighted : pairs) {
            sum += slope(weighted, q);
        }
        return sum;
    }

    private double curvature(double q) {
        double sum = 0;
        for (Weighted weighted : pairs) {
            sum += curvature(weighted, q);
        }
        return sum;
    }

    // x, sx [-]; y, sy, q [C]
    private static double slope(Weighted weighted, double q) {
        CapacityPair pair = weighted.pair();
        double x = pair.changeFraction();
        double y = pair.coulombs();
        double sx2 = pair.changeDeviation() * pair.changeDeviation();
        double sy2 = pair.coulombsDeviation() * pair.coulombsDeviation();
        double v = weighted.variance(q);
        return weighted.weight() * 2 * (q * x - y) * (q * y * sx2 + x * sy2) / (v * v);
    }

    private static double curvature(Weighted weighted, double q) {
        CapacityPair pair = weighted.pair();
        double x = pair.changeFraction();
        double y = pair.coulombs();
        double sx2 = pair.changeDeviation() * pair.changeDeviation();
        double sy2 = pair.coulombsDeviation() * pair.coulombsDeviation();
        double v = weighted.variance(q);
        double top = 2 * sy2 * sy2 * x * x
                + sx2 * sx2 * (6 * q * q * y * y - 4 * q * q * q * x * y)
                - sx2 * sy2 * (6 * q * q * x * x - 12 * q * x * y + 2 * y * y);
        return weighted.weight() * top / (v * v * v);
    }
}
