package fettle.engine.pack.simulation;

import java.util.Arrays;

/**
 * exp(x) of arguments that creep: the exponential of a nearby anchor times four terms of the series.
 *
 * <p>Within 0.02 of the anchor the remainder is below 0.02⁵/5! = 3e-11 of the value; beyond it the anchor is renewed.
 */
final class NearExponential {
    private static final double REACH = 0.02;
    private static final double HALF = 1.0 / 2;
    private static final double THIRD = 1.0 / 3;
    private static final double QUARTER = 1.0 / 4;

    final double[] anchor;
    final double[] atAnchor;

    NearExponential(int size) {
        anchor = new double[size];
        atAnchor = new double[size];
        Arrays.fill(anchor, Double.NaN);
    }

    /** Whether an argument this far from its anchor is served; false for NaN. */
    static boolean reaches(double off) {
        return off <= REACH && off >= -REACH;
    }

    /** exp(off) for a small argument. */
    static double ofSmall(double off) {
        return 1 + off * (1 + off * HALF * (1 + off * THIRD * (1 + off * QUARTER)));
    }

    /** Makes an argument the anchor if it is out of reach. */
    void renew(int at, double argument) {
        if (!reaches(argument - anchor[at])) {
            anchor[at] = argument;
            atAnchor[at] = Math.exp(argument);
        }
    }

    void forget() {
        Arrays.fill(anchor, Double.NaN);
    }
}
