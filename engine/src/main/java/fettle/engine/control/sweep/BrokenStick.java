package fettle.engine.control.sweep;

import java.util.Arrays;

/**
 * Two straight lines that meet at an unknown pulse: least squares over the place of the bend.
 *
 * <p>Formula: y = a + b·x + c·(x − t)₊; the t that leaves the least squares is the bend. Its ± is that of the linearised
 * fit. Readings far off count less (Huber's weights).
 *
 * @param bendSeconds where the lines meet [s]
 * @param standardDeviation of the bend [s]
 * @param slopeBefore b [A/s]
 * @param slopeChange c [A/s], ≥ 0
 * @param gain squares the bend takes off, over the noise's variance
 * @param overParabola squares by which a parabola is worse, over the noise's variance; negative if it is better
 * @param remaining mean square left, over the noise's variance
 */
record BrokenStick(
        double bendSeconds,
        double standardDeviation,
        double slopeBefore,
        double slopeChange,
        double gain,
        double overParabola,
        double remaining) {
    /** Residuals beyond this many standard deviations count less; the usual choice. */
    private static final double HUBER = 1.5;

    private static final int ROUNDS = 3;
    private static final int COARSE_PLACES = 60;
    private static final int FINE = 12;

    /** The best bend with at least three readings before it and two beyond it. */
    static BrokenStick fit(Samples side, double noise) {
        double[] weights = new double[side.size()];
        Arrays.fill(weights, 1);
        double bend = place(side, new LeastSquares(side, weights));
        for (int round = 1; round < ROUNDS; round++) {
            double[] residual = new LeastSquares(side, weights).bend(bend).residual();
            for (int at = 0; at < weights.length; at++) {
                double off = Math.abs(residual[at]) / noise;
                weights[at] = off <= HUBER ? 1 : HUBER / off;
            }
            bend = place(side, new LeastSquares(side, weights));
        }
        return told(new LeastSquares(side, weights), bend, noise, side.size());
    }

    private static double place(Samples side, LeastSquares squares) {
        double[] x = side.pulses();
        double last = x[side.size() - 2];
        double coarse = Math.max(side.stepSeconds(), (last - x[2]) / COARSE_PLACES);
        double near = least(squares, x[2], last, coarse);
        return least(squares, Math.max(x[2], near - coarse), Math.min(last, near + coarse), coarse / FINE);
    }

    private static double least(LeastSquares squares, double from, double to, double step) {
        double best = from;
        double least = Double.MAX_VALUE;
        for (double bend = from; bend < to; bend += step) {
            double remaining = squares.bend(bend).remaining();
            if (remaining < least) {
                least = remaining;
                best = bend;
            }
        }
        return best;
    }

    private static BrokenStick told(LeastSquares squares, double bend, double noise, int count) {
        LeastSquares.Fit fit = squares.bend(bend);
        double variance = noise * noise;
        return new BrokenStick(
                bend,
                fit.change() > 0 ? noise * squares.looseness(bend) / fit.change() : Double.MAX_VALUE,
                fit.slope(),
                fit.change(),
                fit.taken() / variance,
                (squares.parabola().remaining() - fit.remaining()) / variance,
                fit.remaining() / variance / count);
    }
}
