package fettle.engine.trace;

import java.util.Arrays;

/** Where a logger was silent: what passed meanwhile is unknown and is not counted. */
final class Gaps {
    /** A pause shorter than this is a slow write of the logger, not a gap: common practice, no source. */
    private static final double SHORTEST_SECONDS = 5;

    private static final double USUAL_SHARE = 0.99;
    private static final double TIMES_USUAL = 3;

    private Gaps() {}

    /**
     * The sample step above which samples do not belong together [s]: three times the step that 99 of 100 keep within,
     * so that loggers that slow down at rest are not cut up.
     */
    static double limitSeconds(Trace trace) {
        double[] time = trace.timeSeconds();
        if (time.length < 2) {
            return SHORTEST_SECONDS;
        }
        double[] steps = new double[time.length - 1];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = time[i + 1] - time[i];
        }
        Arrays.sort(steps);
        double usual = steps[(int) (USUAL_SHARE * (steps.length - 1))];
        return Math.max(SHORTEST_SECONDS, TIMES_USUAL * usual);
    }
}
