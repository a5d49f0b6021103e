package fettle.engine.control.sweep;

/**
 * Weighted least squares of level, slope and one shape more: y = a + b·x + c·s(x), c ≥ 0.
 *
 * <p>Level and slope are cleared out of everything first (Gram–Schmidt), so that the shape's share stands alone.
 */
final class LeastSquares {
    private final double[] pulses;
    private final double[] roots;
    private final double[] one;
    private final double[] line;
    private final double[] cleared;
    private final double slope;

    LeastSquares(Samples side, double[] weights) {
        int count = side.size();
        pulses = side.pulses();
        roots = new double[count];
        line = new double[count];
        cleared = new double[count];
        for (int at = 0; at < count; at++) {
            roots[at] = Math.sqrt(weights[at]);
            line[at] = roots[at] * pulses[at];
            cleared[at] = roots[at] * side.amps()[at];
        }
        one = roots.clone();
        clear(line, one);
        clear(cleared, one);
        slope = share(cleared, line);
        clear(cleared, line);
    }

    /** The lines that meet at a pulse. */
    Fit bend(double bend) {
        double[] rise = new double[pulses.length];
        for (int at = 0; at < rise.length; at++) {
            rise[at] = Math.max(0, pulses[at] - bend);
        }
        return fit(rise);
    }

    /** The parabola. */
    Fit parabola() {
        double middle = pulses[pulses.length / 2];
        double[] square = new double[pulses.length];
        for (int at = 0; at < square.length; at++) {
            square[at] = (pulses[at] - middle) * (pulses[at] - middle);
        }
        return fit(square);
    }

    /** One standard deviation of the bend's place per unit of noise and of the change of slope. */
    double looseness(double bend) {
        double[] rise = new double[pulses.length];
        double[] shift = new double[pulses.length];
        for (int at = 0; at < rise.length; at++) {
            rise[at] = roots[at] * Math.max(0, pulses[at] - bend);
            shift[at] = pulses[at] > bend ? roots[at] : 0;
        }
        for (double[] of : new double[][] {rise, shift}) {
            clear(of, one);
            clear(of, line);
        }
        clear(shift, rise);
        return 1 / Math.sqrt(dot(shift, shift));
    }

    private Fit fit(double[] shape) {
        for (int at = 0; at < shape.length; at++) {
            shape[at] *= roots[at];
        }
        clear(shape, one);
        double onLine = share(shape, line);
        clear(shape, line);
        double change = Math.max(0, share(cleared, shape));
        double[] residual = cleared.clone();
        double remaining = 0;
        for (int at = 0; at < residual.length; at++) {
            residual[at] -= change * shape[at];
            remaining += residual[at] * residual[at];
            residual[at] /= roots[at];
        }
        return new Fit(slope - change * onLine, change, change * change * dot(shape, shape), remaining, residual);
    }

    private static void clear(double[] of, double[] other) {
        double part = share(of, other);
        for (int at = 0; at < of.length; at++) {
            of[at] -= part * other[at];
        }
    }

    private static double share(double[] of, double[] other) {
        return dot(of, other) / dot(other, other);
    }

    private static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int at = 0; at < one.length; at++) {
            sum += one[at] * other[at];
        }
        return sum;
    }

    /**
     * One fit.
     *
     * @param slope b [A/s]
     * @param change c, in A per unit of the shape
     * @param taken squares the shape takes off [A²]
     * @param remaining weighted squares left [A²]
     * @param residual reading less fit [A]
     */
    record Fit(double slope, double change, double taken, double remaining, double[] residual) {}
}
