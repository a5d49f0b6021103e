package fettle.engine.trace;

/**
 * A stretch of a trace in which the pack did one thing. The segments of a trace follow one another without a hole.
 *
 * @param kind what it did
 * @param from first sample
 * @param to the sample after its last
 */
public record Segment(SegmentKind kind, int from, int to) {
    public Segment {
        if (from < 0 || to <= from) {
            throw new IllegalArgumentException("segment from " + from + " to " + to);
        }
    }

    /** Number of samples. */
    public int size() {
        return to - from;
    }

    /** Time from its first to its last sample [s]. */
    public double durationSeconds(Trace trace) {
        return trace.timeSeconds()[to - 1] - trace.timeSeconds()[from];
    }
}
