package fettle.engine.pack.simulation;

/**
 * exp(x) of arguments that creep: the exponential of a nearby anchor times four terms of the series.
 *
 * <p>Within 0.02 of the anchor the remainder is below 0.02⁵/5! = 3e-11 of the value; beyond it the anchor is renewed.
 */
final class NearExponential {
    private static final double REACH = 0.02;
    private static final double HALF = 1.0 / 2;
    private static final double SIXTH = 1.0 / 6;
    private static final double TWENTY_FOURTH = 1.0 / 24;

    private NearExponential() {}

    /** Whether an argument this far from its anchor is served; false for NaN. */
    static boolean reaches(double off) {
        return Math.abs(off) <= REACH;
    }

    /** Whether two are both served; may say no to two that only just are. */
    static boolean reaches(double off, double other) {
        return off * off + other * other <= REACH * REACH;
    }

    /** exp(off) for a small argument. */
    static double ofSmall(double off) {
        double square = off * off;
        return 1 + off + square * (HALF + off * SIXTH + square * TWENTY_FOURTH);
    }

    /** Makes an argument the anchor if it is out of reach: the anchor is kept at a place of an array, its value beside it. */
    static void renew(double[] kept, int at, double argument) {
        if (!reaches(argument - kept[at])) {
            kept[at] = argument;
            kept[at + 1] = Math.exp(argument);
        }
    }
}
