package fettle.engine.trace;

import java.util.List;
import java.util.Optional;

/**
 * Everything a trace tells by itself: what the pack did, what passed through it, what went wrong.
 *
 * @param segments what it did, in order, without holes
 * @param counts charge and energy of each segment; empty if no current was logged
 * @param total the sum of the counts
 * @param offset what the current shows at rest; empty if unknown
 * @param events what went wrong, in order of time
 * @param rests volts at the end of its rests
 * @param remarks what cannot be known, and what makes the trace doubtful, in sentences
 */
public record TraceReview(
        List<Segment> segments,
        List<Count> counts,
        Count total,
        Optional<CurrentOffset> offset,
        List<TraceEvent> events,
        List<TraceRest> rests,
        List<String> remarks) {

    public TraceReview {
        segments = List.copyOf(segments);
        counts = List.copyOf(counts);
        events = List.copyOf(events);
        rests = List.copyOf(rests);
        remarks = List.copyOf(remarks);
    }

    /** Reviews a trace against a pack's limits. */
    public static TraceReview of(Trace trace, TraceLimits limits) {
        List<Segment> segments = Segmentation.of(trace);
        List<Count> counts = trace.hasCurrent() ? Counting.ofSegments(trace, segments) : List.of();
        return new TraceReview(
                segments,
                counts,
                counts.stream().reduce(Count.NOTHING, Count::plus),
                CurrentOffset.of(trace, segments),
                EventSearch.of(trace, segments, limits),
                RestSearch.of(trace, segments, limits.cellsInSeries()),
                Oddities.of(trace, segments));
    }
}
