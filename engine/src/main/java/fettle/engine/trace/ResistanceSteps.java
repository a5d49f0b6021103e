package fettle.engine.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Finds where the resistance seen in load steps rises suddenly: a joint, a connector, a cell giving way.
 *
 * <p>Formula: r = −Δv/Δi for every step of the current of a fifth of the usual load within a run. The median of sixteen
 * such steps is compared with that of the next sixteen, all within five minutes; a rise counts if it is half as much
 * again or more and six times the scatter, and what was before it is not below half the run's middle. Figures: common practice, no source. Leaves out: slow rises (an emptying pack, a
 * cooling one) and loads without steps.
 */
final class ResistanceSteps {
    private static final int WINDOW = 16;
    private static final double LEAST_STEP_SHARE = 0.2;
    private static final double LONGEST_STEP_SECONDS = 2;
    private static final double LONGEST_SPAN_SECONDS = 300;
    private static final double LEAST_RISE = 1.5;
    private static final double TIMES_SCATTER = 6;

    private ResistanceSteps() {}

    static List<TraceEvent> of(Trace trace, List<Segment> segments) {
        List<TraceEvent> events = new ArrayList<>();
        if (!trace.hasCurrent()) {
            return events;
        }
        for (Segment segment : segments) {
            if (segment.kind() != SegmentKind.RUN) {
                continue;
            }
            for (int cell = 1; cell <= trace.cells(); cell++) {
                search(trace, segment, trace.cellVolts()[cell - 1], cell, events);
            }
            if (trace.cells() == 0 && trace.hasVolts()) {
                search(trace, segment, trace.packVolts(), 0, events);
            }
        }
        return events;
    }

    private static void search(Trace trace, Segment segment, double[] volts, int cell, List<TraceEvent> events) {
        int[] steps = steps(trace, segment);
        double[] ohms = new double[steps.length];
        for (int k = 0; k < steps.length; k++) {
            int i = steps[k];
            ohms[k] = -(volts[i + 1] - volts[i]) / (trace.currentAmps()[i + 1] - trace.currentAmps()[i]);
        }
        double usual = ohms.length == 0 ? 0 : median(ohms, 0, ohms.length);
        int k = WINDOW;
        while (k + WINDOW <= ohms.length) {
            double seconds = trace.timeSeconds()[steps[k + WINDOW - 1]] - trace.timeSeconds()[steps[k - WINDOW]];
            double before = median(ohms, k - WINDOW, WINDOW);
            double after = median(ohms, k, WINDOW);
            boolean rises = before > 0.5 * usual && after >= LEAST_RISE * before;
            if (rises
                    && seconds <= LONGEST_SPAN_SECONDS
                    && after - before >= TIMES_SCATTER * Math.max(scatter(ohms, k - WINDOW), scatter(ohms, k))) {
                events.add(new TraceEvent(
                        EventKind.RESISTANCE_STEP, cell, trace.timeSeconds()[steps[k]], 0, after, before));
                k += WINDOW;
            }
            k++;
        }
    }

    /** Samples after which the current steps. */
    private static int[] steps(Trace trace, Segment segment) {
        double[] amps = trace.currentAmps();
        double[] time = trace.timeSeconds();
        double[] usual = Arrays.copyOfRange(amps, segment.from(), segment.to());
        Arrays.sort(usual);
        double least = LEAST_STEP_SHARE * usual[usual.length / 2 + (usual.length - 1) / 4];
        int[] found = new int[segment.size()];
        int count = 0;
        for (int i = segment.from(); i < segment.to() - 1; i++) {
            if (least > 0
                    && Math.abs(amps[i + 1] - amps[i]) >= least
                    && time[i + 1] - time[i] <= LONGEST_STEP_SECONDS) {
                found[count++] = i;
            }
        }
        return Arrays.copyOf(found, count);
    }

    private static double median(double[] values, int from, int count) {
        double[] sorted = Arrays.copyOfRange(values, from, from + count);
        Arrays.sort(sorted);
        return 0.5 * (sorted[(count - 1) / 2] + sorted[count / 2]);
    }

    /** Standard error of the median from the median deviation: 1.4826 MAD √(π/2n), for a normal scatter. */
    private static double scatter(double[] values, int from) {
        double middle = median(values, from, WINDOW);
        double[] away = new double[WINDOW];
        for (int i = 0; i < WINDOW; i++) {
            away[i] = Math.abs(values[from + i] - middle);
        }
        return 1.4826 * median(away, 0, WINDOW) * Math.sqrt(Math.PI / (2.0 * WINDOW));
    }
}
