package fettle.engine.trace;

import java.util.ArrayList;
import java.util.List;

/**
 * Tells rest from run where no current was logged, by the sag alone: a run begins when the pack falls by 3 % within two
 * seconds and ends when it rises by as much and stays above the last volts under load.
 *
 * <p>Leaves out: charging, and loads too light to sag 3 %; such a trace is one rest. Figure: common practice, no source;
 * checked against measured flights.
 */
final class VoltsSegmentation {
    private static final double STEP_SHARE = 0.03;
    private static final double STEP_SECONDS = 2;

    private VoltsSegmentation() {}

    static List<Segment> of(Trace trace) {
        List<Segment> segments = new ArrayList<>();
        int onset = trace.hasVolts() ? firstFall(trace) : trace.size();
        if (onset > 0) {
            segments.add(new Segment(SegmentKind.REST, 0, onset));
        }
        if (onset < trace.size()) {
            int end = recovery(trace, onset);
            segments.add(new Segment(SegmentKind.RUN, onset, end));
            if (end < trace.size()) {
                segments.add(new Segment(SegmentKind.REST, end, trace.size()));
            }
        }
        return segments;
    }

    /** First sample 3 % below the highest volts of the two seconds before it; the size if there is none. */
    private static int firstFall(Trace trace) {
        double[] time = trace.timeSeconds();
        double[] volts = trace.packVolts();
        int back = 0;
        for (int i = 1; i < volts.length; i++) {
            while (time[i] - time[back] > STEP_SECONDS) {
                back++;
            }
            for (int j = back; j < i; j++) {
                if (volts[i] < volts[j] * (1 - STEP_SHARE)) {
                    return i;
                }
            }
        }
        return volts.length;
    }

    /** First sample of the last stretch that lies 3 % above all before it back to two seconds; the size if none. */
    private static int recovery(Trace trace, int onset) {
        double[] volts = trace.packVolts();
        double[] time = trace.timeSeconds();
        int last = volts.length - 1;
        double lowestAfter = volts[last];
        for (int i = last; i > onset; i--) {
            lowestAfter = Math.min(lowestAfter, volts[i]);
            int before = i - 1;
            double highestBefore = 0;
            while (before > onset && time[i] - time[before] <= STEP_SECONDS) {
                highestBefore = Math.max(highestBefore, volts[before]);
                before--;
            }
            if (highestBefore > 0 && lowestAfter > highestBefore * (1 + STEP_SHARE)) {
                return i;
            }
        }
        return volts.length;
    }
}
