package fettle.engine.health.identification;

import java.util.Arrays;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * The circuit that fits a window best, by damped Gauss-Newton from a start, with spikes left out.
 *
 * <p>Formula: the least of Σ wₜ rₜ² / v + belief, v the residual variance times rows over effective rows. Covariance
 * H⁻¹ (JᵀW Σ W J / v² + P) H⁻¹, H = JᵀWJ / v + P, Σ from {@link ResidualNoise}, P the belief's inverse variances.
 */
final class CircuitFit {
    private static final double FIRST_SCALE = 1e-4; // 3 mV, squared, times ten rows an independent one: lets data lead
    private static final ResidualNoise FIRST_NOISE = new ResidualNoise(FIRST_SCALE, 0, 1, 1);
    private static final double[][] NO_COLUMNS = {};
    private static final int ROUNDS = 2; // fit, look at the residuals, weigh again
    private static final int SCOUT_STEPS = 2; // enough to tell a good start from a bad one
    private static final int MOST_STEPS = 25;
    private static final double ENOUGH =
            1e-6; // relative fall of the cost that ends a round: a thousandth of one independent reading in a thousand
    private static final double DELAY_BELIEF_SECONDS = 0.5;
    private static final double LOG_TAU_BELIEF = 3; // e³: a factor of 20 either way of the start
    private static final double RIDGE = 1e-12;
    private static final double SHORTEST_STEPS = 0.1; // a quicker pair is part of R0
    private static final double LONGEST_DURATIONS = 10; // a slower pair is a straight fall of the rest volts

    private final LoadWindow window;
    private final CellBelief belief;
    private final CircuitModel model;
    private final boolean delayFree;
    private final double[] centre;
    private final double[] precision;
    private final double[] timeWeights;
    private final double[] weights;
    private final double shortest;
    private final double longest;
    private CircuitPoint point;
    private ResidualNoise noise;
    private double[] residual;
    private double[][] columns;
    private int spikes;
    private boolean isLookedAt;

    CircuitFit(LoadWindow window, CellBelief belief, CircuitPoint start, boolean delayFree, double[] timeWeights) {
        this.window = window;
        this.belief = belief;
        this.model = new CircuitModel(window, belief.curve());
        this.delayFree = delayFree;
        this.weights = timeWeights.clone();
        this.shortest = Math.log(SHORTEST_STEPS * window.stepSeconds());
        this.longest = Math.log(LONGEST_DURATIONS * window.durationSeconds());
        this.point = start;
        this.centre = new double[start.size(delayFree)];
        this.precision = new double[centre.length];
        believe(start);
        CircuitModel.Look look = model.look(point, delayFree);
        this.columns = look.columns();
        this.residual = residuals(look);
        this.timeWeights = timeWeights;
        this.noise = FIRST_NOISE;
        improve(FIRST_SCALE, SCOUT_STEPS);
    }

    /** Weighted squares of what is left, all rows counted [V²]: lower is the better of two starts. */
    double misfit() {
        double sum = 0;
        for (int row = 0; row < residual.length; row++) {
            sum += timeWeights[row] * residual[row] * residual[row];
        }
        return sum;
    }

    /** This fit at its best, every row weighed by its time. */
    CircuitFit settled() {
        improve(FIRST_SCALE, MOST_STEPS);
        return this;
    }

    /** This fit with spikes left out and every row weighed by what the residuals look like. */
    CircuitFit refined() {
        settled();
        for (int round = 0; round < ROUNDS; round++) {
            leaveOutSpikes();
            noise = round == 0
                    ? ResidualNoise.of(window, residual, weights)
                    : ResidualNoise.of(window, residual, weights, NO_COLUMNS, noise);
            improve(scale(), MOST_STEPS);
        }
        isLookedAt = false;
        return this;
    }

    CircuitPoint point() {
        return point;
    }

    /** What the residuals look like, what the fit swallowed of them allowed for. */
    ResidualNoise noise() {
        if (!isLookedAt) {
            noise = ResidualNoise.of(window, residual, weights, columns, noise);
            isLookedAt = true;
        }
        return noise;
    }

    /** Mean square of the residuals of the rows that counted [V²]. */
    double variance() {
        return ResidualNoise.variance(residual, weights);
    }

    int spikes() {
        return spikes;
    }

    /** Root mean square of the residuals of the rows that counted [V]. */
    double rmsVolts() {
        return Math.sqrt(variance());
    }

    /** Covariance of the parameters, in the order of {@link CircuitPoint#plus}. */
    RealMatrix covariance() {
        ResidualNoise seen = noise();
        double scale = scale();
        RealMatrix inverse = inverse(normal(scale));
        double[][] middle = seen.spread(window, columns, weights);
        for (int i = 0; i < middle.length; i++) {
            for (int j = 0; j < middle.length; j++) {
                middle[i][j] /= scale * scale;
            }
            middle[i][i] += precision[i];
        }
        return inverse.multiply(new Array2DRowRealMatrix(middle, false)).multiply(inverse);
    }

    /** Scaled to a diagonal of 1 and a trace of ridge first: what no row tells of gets a huge ±, not an error. */
    private static RealMatrix inverse(double[][] normal) {
        int size = normal.length;
        double[] unit = new double[size];
        for (int i = 0; i < size; i++) {
            unit[i] = normal[i][i] > 0 ? 1 / Math.sqrt(normal[i][i]) : 1;
        }
        double[][] scaled = new double[size][size];
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                scaled[i][j] = normal[i][j] * unit[i] * unit[j];
            }
            scaled[i][i] += RIDGE;
        }
        RealMatrix inverse = MatrixUtils.inverse(new Array2DRowRealMatrix(scaled, false));
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                inverse.multiplyEntry(i, j, unit[i] * unit[j]);
            }
        }
        return inverse;
    }

    private void believe(CircuitPoint start) {
        int pairs = start.pairs();
        for (int pair = 0; pair < pairs; pair++) {
            centre[pairs + 1 + pair] = start.logTau()[pair];
            precision[pairs + 1 + pair] = 1 / (LOG_TAU_BELIEF * LOG_TAU_BELIEF);
        }
        double charge = belief.startCharge().standardDeviation();
        centre[2 * pairs + 1] = belief.startCharge().value();
        precision[2 * pairs + 1] = 1 / (charge * charge);
        double capacity = belief.capacityCoulombs().value();
        double relative = belief.capacityCoulombs().standardDeviation() / capacity;
        centre[2 * pairs + 2] = Math.log(capacity);
        precision[2 * pairs + 2] = 1 / (relative * relative);
        if (delayFree) {
            precision[2 * pairs + 3] = 1 / (DELAY_BELIEF_SECONDS * DELAY_BELIEF_SECONDS);
        }
    }

    private void leaveOutSpikes() {
        boolean[] jumps = Spikes.in(residual);
        spikes = 0;
        for (int row = 0; row < weights.length; row++) {
            weights[row] = jumps[row] ? 0 : timeWeights[row];
            spikes += jumps[row] ? 1 : 0;
        }
    }

    private double scale() {
        return noise.variance() * window.rows() / noise.effectiveSamples();
    }

    private void improve(double scale, int mostSteps) {
        double cost = cost(point, residual, scale);
        double damping = 1e-8;
        for (int step = 0; step < mostSteps; step++) {
            double[][] normal = normal(scale);
            double[] downhill = downhill(scale);
            boolean moved = false;
            double fall = 0;
            for (int attempt = 0; attempt < 8 && !moved; attempt++) {
                CircuitPoint next = point.towards(solve(normal, downhill, damping), shortest, longest);
                CircuitModel.Look look = model.look(next, delayFree);
                double[] nextResidual = residuals(look);
                double nextCost = cost(next, nextResidual, scale);
                if (nextCost < cost) {
                    fall = cost - nextCost;
                    cost = nextCost;
                    point = next;
                    residual = nextResidual;
                    columns = look.columns();
                    moved = true;
                    damping = Math.max(1e-10, damping / 10);
                } else {
                    damping *= 30;
                }
            }
            if (!moved || fall < ENOUGH * cost) {
                return;
            }
        }
    }

    /** Solves with every parameter scaled to its own column, so that ohms and charge weigh alike in the damping. */
    private static double[] solve(double[][] normal, double[] downhill, double damping) {
        int size = normal.length;
        double[][] scaled = new double[size][size];
        double[] right = new double[size];
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                scaled[i][j] = normal[i][j] / Math.sqrt(normal[i][i] * normal[j][j]);
            }
            scaled[i][i] = 1 + damping;
            right[i] = downhill[i] / Math.sqrt(normal[i][i]);
        }
        double[] step = SmallSystem.solve(scaled, right);
        for (int i = 0; i < size; i++) {
            step[i] /= Math.sqrt(normal[i][i]);
        }
        return step;
    }

    private double[] residuals(CircuitModel.Look look) {
        double[] volts = look.volts();
        for (int row = 0; row < volts.length; row++) {
            volts[row] = window.volts(row) - volts[row];
        }
        return volts;
    }

    private double cost(CircuitPoint at, double[] residual, double scale) {
        double sum = 0;
        for (int row = 0; row < residual.length; row++) {
            sum += weights[row] * residual[row] * residual[row];
        }
        double[] values = values(at);
        double belief = 0;
        for (int i = 0; i < values.length; i++) {
            double away = values[i] - centre[i];
            belief += precision[i] * away * away;
        }
        boolean possible = Double.isFinite(sum) && Arrays.stream(at.ohms()).allMatch(ohms -> ohms > 0);
        return possible ? sum / scale + belief : Double.POSITIVE_INFINITY;
    }

    private double[][] normal(double scale) {
        double[][] normal = new double[columns.length][columns.length];
        for (int i = 0; i < columns.length; i++) {
            for (int j = 0; j <= i; j++) {
                normal[i][j] = weighted(columns[i], columns[j]) / scale;
                normal[j][i] = normal[i][j];
            }
            normal[i][i] += precision[i];
        }
        return normal;
    }

    private double[] downhill(double scale) {
        double[] values = values(point);
        double[] downhill = new double[columns.length];
        for (int i = 0; i < columns.length; i++) {
            downhill[i] = weighted(columns[i], residual) / scale - precision[i] * (values[i] - centre[i]);
        }
        return downhill;
    }

    private double weighted(double[] left, double[] right) {
        double sum = 0;
        for (int row = 0; row < left.length; row++) {
            sum += weights[row] * left[row] * right[row];
        }
        return sum;
    }

    private double[] values(CircuitPoint at) {
        double[] values = new double[centre.length];
        int pairs = at.pairs();
        System.arraycopy(at.ohms(), 0, values, 0, pairs + 1);
        System.arraycopy(at.logTau(), 0, values, pairs + 1, pairs);
        values[2 * pairs + 1] = at.startCharge();
        values[2 * pairs + 2] = at.logCapacity();
        if (delayFree) {
            values[2 * pairs + 3] = at.delaySeconds();
        }
        return values;
    }
}
