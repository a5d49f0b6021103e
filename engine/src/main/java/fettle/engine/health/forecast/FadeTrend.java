package fettle.engine.health.forecast;

import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.InputException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The trend of a pack's health: a level that fades, the fade itself, and a recovery that dies out. Immutable.
 *
 * <p>Formula, h cycles and d days on: level m ← m − s·h − c·d, fade s ← s, recovery r ← ρʰ r, a reading is m + r + noise; noise
 * of s and m as random walks. A rest of days, or a reading more than {@value #JUMP_DEVIATIONS} deviations off, opens r: the
 * changepoint. Kalman filter; the forecast is its own prediction.
 *
 * @see "A. C. Harvey, Forecasting, Structural Time Series Models and the Kalman Filter, Cambridge 1989 (local linear trend)"
 */
public final class FadeTrend {
    private static final double JUMP_DEVIATIONS = 3;
    private static final double REST_DAYS = 0.5; // shorter breaks are part of cycling
    private static final double REST_MEMORY_DAYS = 2; // most of a recovery is there after two days
    private static final double LONGEST_CYCLES = 5000;
    /** Scatter is known from a few records, a few independent stretches each: intervals are Student's, not normal. */
    static final int FREEDOM = 5;

    /** Half the width of the 95 % interval in standard deviations: Student's t of five degrees of freedom. */
    public static final double TWO_SIDED_95 = 2.570582;

    private static final double FIRST_LEVEL_DEVIATION = 0.01;
    private static final double FIRST_RECOVERY_DEVIATION = 0.003;

    private final FadeBelief belief;
    private final double[] state;
    private final double[][] covariance;
    private final HealthPoint last;
    private final double cyclesPerDay;
    private final List<Double> changepoints;

    private FadeTrend(
            FadeBelief belief,
            double[] state,
            double[][] covariance,
            HealthPoint last,
            double cyclesPerDay,
            List<Double> changepoints) {
        this.belief = belief;
        this.state = state;
        this.covariance = covariance;
        this.last = last;
        this.cyclesPerDay = cyclesPerDay;
        this.changepoints = List.copyOf(changepoints);
    }

    /**
     * The trend through readings.
     *
     * @param points oldest first, at least one
     * @param belief what is believed before
     */
    public static FadeTrend through(List<HealthPoint> points, FadeBelief belief) {
        if (points.isEmpty()) {
            throw new InputException(
                    "points",
                    "there is no reading of capacity or resistance. Note a charge with rest volts before and after.");
        }
        HealthPoint first = points.get(0);
        double[] state = {first.share(), belief.perCycle(), 0};
        double[][] covariance = diagonal(
                Math.hypot(FIRST_LEVEL_DEVIATION, first.deviation()),
                belief.perCycleDeviation(),
                FIRST_RECOVERY_DEVIATION);
        List<Double> changepoints = new ArrayList<>();
        HealthPoint before = first;
        for (HealthPoint point : points) {
            double cycles = point.cycle() - before.cycle();
            double days = point.day() - before.day();
            if (cycles < 0 || days < 0) {
                throw new InputException(
                        "points",
                        "reading at cycle " + point.cycle() + " comes after a later one; expected oldest first.");
            }
            advance(state, covariance, cycles, days, belief);
            if (days > REST_DAYS) {
                double rested = 1 - Math.exp(-days / REST_MEMORY_DAYS);
                covariance[2][2] += belief.recovery() * belief.recovery() * rested;
            }
            if (take(state, covariance, point, belief)) {
                changepoints.add(point.cycle());
            }
            before = point;
        }
        double spanDays = before.day() - first.day();
        double pace = spanDays > 0 ? (before.cycle() - first.cycle()) / spanDays : 0;
        return new FadeTrend(belief, state, covariance, before, pace, changepoints);
    }

    /** Health now, recovery left out: what lasts. */
    public Estimate level() {
        double deviation = Math.sqrt(covariance[0][0]);
        return new Estimate(state[0], deviation, List.of(new Driver("scatter of the readings", deviation)));
    }

    /** Fade in a full cycle, share of new. */
    public Estimate fadePerCycle() {
        double deviation = Math.sqrt(covariance[1][1]);
        return new Estimate(state[1], deviation, List.of(new Driver("how far the record reaches", deviation)));
    }

    /** What the last rest gave back for a while, share of new. */
    public double recovery() {
        return state[2];
    }

    /** Cycles at which health jumped. */
    public List<Double> changepoints() {
        return changepoints;
    }

    /** Cycles a day over the record; 0 where it spans no time. */
    public double cyclesPerDay() {
        return cyclesPerDay;
    }

    /** Health expected so many cycles on, as a reading would show it, used at the pace of the record. */
    public Estimate after(double cycles) {
        return after(cycles, UseEffect.NONE);
    }

    /** The same when use changes now. */
    public Estimate after(double cycles, UseEffect effect) {
        double[] then = state.clone();
        double[][] spread = copy(covariance);
        double days = daysFor(cycles);
        double byCycles = state[1] * cycles;
        double byDays = belief.perDay() * days;
        advance(then, spread, cycles, days, belief);
        double level = then[0]
                - byCycles * (effect.cycling().value() - 1)
                - byDays * (effect.rest().value() - 1);
        double variance = spread[0][0] + 2 * spread[0][2] + spread[2][2] + belief.reading() * belief.reading();
        double doubt = Math.hypot(
                byCycles * effect.cycling().standardDeviation(),
                byDays * effect.rest().standardDeviation());
        return new Estimate(level + then[2], Math.hypot(Math.sqrt(variance), doubt), List.of());
    }

    /** When readings first fall below a share of new. */
    public Crossing crossing(double share) {
        return crossing(share, UseEffect.NONE);
    }

    /** The same when use changes now. */
    public Crossing crossing(double share, UseEffect effect) {
        double[] steps = new double[3];
        Arrays.fill(steps, Double.POSITIVE_INFINITY);
        double[] needed = {-TWO_SIDED_95, 0, TWO_SIDED_95};
        int next = 0;
        int stride = 1;
        for (int cycles = 1; cycles <= LONGEST_CYCLES && next < needed.length; cycles += stride) {
            Estimate then = after(cycles, effect);
            double below = (share - then.value()) / then.standardDeviation();
            while (next < needed.length && below >= needed[next]) {
                steps[next++] = cycles;
            }
            stride = cycles < 400 ? 1 : 10;
        }
        return new Crossing(steps[0], steps[1], steps[2]);
    }

    /** Days so many cycles take at the pace of the record; 0 where there is no pace. */
    private double daysFor(double cycles) {
        return cyclesPerDay > 0 ? cycles / cyclesPerDay : 0;
    }

    /** The last reading. */
    public HealthPoint last() {
        return last;
    }

    // m level, s fade, r recovery; h cycles
    private static void advance(double[] state, double[][] c, double h, double days, FadeBelief belief) {
        double stays = Math.pow(belief.recoveryStays(), h);
        state[0] -= state[1] * h + belief.perDay() * days;
        state[2] *= stays;
        double[][] f = {{1, -h, 0}, {0, 1, 0}, {0, 0, stays}};
        double[][] moved = product(product(f, c), transposed(f));
        double drift = belief.perCycleDrift() * belief.perCycleDrift();
        double shelf = belief.perDay() * days; // published shelf fades differ by a factor of 3: ± of its own size
        moved[0][0] += belief.wander() * belief.wander() * h + drift * h * h * h / 3 + shelf * shelf;
        moved[0][1] -= drift * h * h / 2;
        moved[1][0] -= drift * h * h / 2;
        moved[1][1] += drift * h;
        for (int i = 0; i < c.length; i++) {
            System.arraycopy(moved[i], 0, c[i], 0, c.length);
        }
    }

    /** Takes a reading; true where it was a jump. */
    private static boolean take(double[] state, double[][] c, HealthPoint point, FadeBelief belief) {
        double own = belief.reading() * belief.reading() + point.deviation() * point.deviation();
        double surprise = point.share() - state[0] - state[2];
        boolean jump = Math.abs(surprise) > JUMP_DEVIATIONS * Math.sqrt(variance(c) + own);
        if (jump) {
            c[2][2] += belief.recovery() * belief.recovery();
        }
        double total = variance(c) + own;
        double[] cross = new double[c.length];
        for (int i = 0; i < c.length; i++) {
            cross[i] = c[i][0] + c[i][2];
        }
        for (int i = 0; i < c.length; i++) {
            state[i] += cross[i] / total * surprise;
            for (int j = 0; j < c.length; j++) {
                c[i][j] -= cross[i] * cross[j] / total;
            }
        }
        return jump;
    }

    private static double variance(double[][] c) {
        return c[0][0] + 2 * c[0][2] + c[2][2];
    }

    private static double[][] diagonal(double... deviations) {
        double[][] matrix = new double[deviations.length][deviations.length];
        for (int i = 0; i < deviations.length; i++) {
            matrix[i][i] = deviations[i] * deviations[i];
        }
        return matrix;
    }

    private static double[][] product(double[][] left, double[][] right) {
        double[][] product = new double[left.length][left.length];
        for (int i = 0; i < left.length; i++) {
            for (int j = 0; j < left.length; j++) {
                for (int k = 0; k < left.length; k++) {
                    product[i][j] += left[i][k] * right[k][j];
                }
            }
        }
        return product;
    }

    private static double[][] transposed(double[][] matrix) {
        double[][] turned = new double[matrix.length][matrix.length];
        for (int i = 0; i < matrix.length; i++) {
            for (int j = 0; j < matrix.length; j++) {
                turned[i][j] = matrix[j][i];
            }
        }
        return turned;
    }

    private static double[][] copy(double[][] matrix) {
        return Arrays.stream(matrix).map(double[]::clone).toArray(double[][]::new);
    }
}
