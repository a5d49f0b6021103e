package fettle.engine.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Cuts a trace into rest, run, charge and balance.
 *
 * <p>With current: a sample is loaded above half a per cent of the current that 95 of 100 samples keep within, never
 * below 10 mA. Rests under 30 s, charging bursts under 60 s inside a run (braking) and loads under 1 s inside a rest
 * belong to what surrounds them. No segment reaches across a gap. Times: common practice, no source. Without current
 * see {@link VoltsSegmentation}.
 */
public final class Segmentation {
    private static final double LEAST_LOAD_AMPS = 0.01;
    private static final double LOAD_SHARE = 0.005;
    private static final double USUAL_SHARE = 0.95;
    private static final double SHORTEST_REST_SECONDS = 30;
    private static final double LONGEST_BRAKING_SECONDS = 60;
    private static final double LONGEST_DIP_SECONDS = 5;
    private static final double SHORTEST_LOAD_SECONDS = 1;

    private final Trace trace;
    private final double gapSeconds;

    private Segmentation(Trace trace) {
        this.trace = trace;
        this.gapSeconds = Gaps.limitSeconds(trace);
    }

    /** The segments of a trace, in order, covering every sample. */
    public static List<Segment> of(Trace trace) {
        Segmentation segmentation = new Segmentation(trace);
        List<Segment> segments = trace.hasCurrent() ? segmentation.byCurrent() : VoltsSegmentation.of(trace);
        return BalanceSearch.mark(trace, segments);
    }

    /** Current above which a pack counts as loaded [A]. */
    static double loadAmps(Trace trace) {
        double[] size =
                Arrays.stream(trace.currentAmps()).map(Math::abs).sorted().toArray();
        return Math.max(LEAST_LOAD_AMPS, LOAD_SHARE * size[(int) (USUAL_SHARE * (size.length - 1))]);
    }

    private List<Segment> byCurrent() {
        List<Segment> raw = classified();
        List<Segment> joined = joined(absorbed(raw, this::isShortRest));
        joined = joined(absorbed(joined, this::isBraking));
        joined = joined(absorbed(joined, this::isDip));
        joined = joined(absorbed(joined, this::isBlip));
        List<Segment> phased = new ArrayList<>();
        joined.forEach(segment -> ChargePhases.split(trace, segment, phased));
        return phased;
    }

    private List<Segment> classified() {
        double load = loadAmps(trace);
        List<Segment> segments = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= trace.size(); i++) {
            if (i == trace.size() || kind(i, load) != kind(from, load) || isGap(i)) {
                segments.add(new Segment(kind(from, load), from, i));
                from = i;
            }
        }
        return segments;
    }

    private SegmentKind kind(int sample, double loadAmps) {
        double amps = trace.currentAmps()[sample];
        if (Math.abs(amps) <= loadAmps) {
            return SegmentKind.REST;
        }
        return amps > 0 ? SegmentKind.RUN : SegmentKind.CHARGE_CONSTANT_CURRENT;
    }

    /** Whether a sample comes after a gap. */
    private boolean isGap(int sample) {
        return trace.timeSeconds()[sample] - trace.timeSeconds()[sample - 1] > gapSeconds;
    }

    @FunctionalInterface
    private interface Swallow {
        boolean test(Segment before, Segment middle, Segment after);
    }

    /** Gives a segment a neighbour's kind where the rule says so; no rule reaches across a gap. */
    private List<Segment> absorbed(List<Segment> segments, Swallow rule) {
        List<Segment> result = new ArrayList<>(segments);
        for (int i = 1; i < result.size() - 1; i++) {
            Segment before = result.get(i - 1);
            Segment middle = result.get(i);
            Segment after = result.get(i + 1);
            if (!isGap(middle.from()) && !isGap(after.from()) && rule.test(before, middle, after)) {
                SegmentKind kind = after.kind() == SegmentKind.RUN ? after.kind() : before.kind();
                result.set(i, new Segment(kind, middle.from(), middle.to()));
            }
        }
        return result;
    }

    private boolean isShortRest(Segment before, Segment middle, Segment after) {
        return middle.kind() == SegmentKind.REST
                && before.kind().isLoaded()
                && after.kind().isLoaded()
                && lasts(middle) < SHORTEST_REST_SECONDS;
    }

    private boolean isBraking(Segment before, Segment middle, Segment after) {
        return middle.kind().isCharge()
                && (before.kind() == SegmentKind.RUN || after.kind() == SegmentKind.RUN)
                && lasts(middle) < LONGEST_BRAKING_SECONDS;
    }

    private boolean isDip(Segment before, Segment middle, Segment after) {
        return middle.kind() == SegmentKind.RUN
                && before.kind().isCharge()
                && after.kind().isCharge()
                && lasts(middle) < LONGEST_DIP_SECONDS;
    }

    private boolean isBlip(Segment before, Segment middle, Segment after) {
        return middle.kind().isLoaded()
                && before.kind() == SegmentKind.REST
                && after.kind() == SegmentKind.REST
                && lasts(middle) < SHORTEST_LOAD_SECONDS;
    }

    /** Time to the first sample of the next segment [s]. */
    private double lasts(Segment segment) {
        int end = Math.min(segment.to(), trace.size() - 1);
        return trace.timeSeconds()[end] - trace.timeSeconds()[segment.from()];
    }

    private List<Segment> joined(List<Segment> segments) {
        List<Segment> result = new ArrayList<>();
        for (Segment segment : segments) {
            Segment last = result.isEmpty() ? null : result.get(result.size() - 1);
            if (last != null && last.kind() == segment.kind() && !isGap(segment.from())) {
                result.set(result.size() - 1, new Segment(last.kind(), last.from(), segment.to()));
            } else {
                result.add(segment);
            }
        }
        return result;
    }
}
