package fettle.engine.trace;

import fettle.engine.units.Estimate;
import fettle.engine.units.InputException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Reviews a trace of any length part by part and puts the findings together. Not thread-safe.
 *
 * <p>Each part is reviewed with the last sample of the part before it, so that no step goes uncounted. Leaves out: what
 * only shows across a part's border, such as a step of resistance within sixteen load steps of it.
 */
public final class TraceRecorder {
    private final Swaps swaps;
    private final TraceLimits limits;
    private final String tag;
    private final List<SegmentRecord> segments = new ArrayList<>();
    private final List<TraceEvent> events = new ArrayList<>();
    private final Set<String> remarks = new LinkedHashSet<>();
    private final List<TraceRest> rests = new ArrayList<>();
    private @Nullable Trace last;
    private @Nullable Trace longestRun;
    private double longestRunSeconds;
    private @Nullable Instant startedAt;
    private long samples;
    private int cells;
    private boolean hasCurrent;
    private double firstSeconds;
    private double lastSeconds;
    private double offsetSum;
    private double offsetSeconds;

    /** What is said of volts that look as if the log went on with another pack. */
    public enum Swaps {
        /** Nothing yet: the log is refused, and a person asked. */
        ASK,
        /** It is one pack, charged in between without a log. */
        ONE_PACK
    }

    /** @param tag the pack's tag, for refusals */
    public TraceRecorder(TraceLimits limits, String tag, Swaps swaps) {
        this.swaps = swaps;
        this.limits = limits;
        this.tag = tag;
    }

    /**
     * Takes the next part.
     *
     * @throws fettle.engine.units.InputException if it cannot be of this pack
     */
    public void add(Trace part) {
        PackFit.require(part, limits, tag);
        Trace before = last;
        Trace joined = before == null ? part : join(before, part);
        TraceReview review = TraceReview.of(joined, limits);
        refuseSwap(joined, review.segments());
        record(joined, review);
        if (before == null) {
            firstSeconds = part.timeSeconds()[0];
            startedAt = part.startedAt();
            cells = part.cells();
            hasCurrent = part.hasCurrent();
        }
        samples += part.size();
        lastSeconds = part.timeSeconds()[part.size() - 1];
        last = part.part(part.size() - 1, part.size());
    }

    private void refuseSwap(Trace trace, List<Segment> segments) {
        if (swaps == Swaps.ONE_PACK) {
            return;
        }
        PackSwap.first(trace, segments).ifPresent(swap -> {
            throw new InputException(
                    "packs",
                    swap.sentence() + ". If it is all " + tag + ", say so (--one-pack); else cut the log before sample "
                            + (samples + swap.sample() + (last == null ? 1 : 0))
                            + " and add each part to the pack it is of.");
        });
    }

    private void record(Trace trace, TraceReview review) {
        for (int i = 0; i < review.segments().size(); i++) {
            Segment segment = review.segments().get(i);
            Count count =
                    review.counts().isEmpty() ? Count.NOTHING : review.counts().get(i);
            append(new SegmentRecord(
                    segment.kind(), trace.timeSeconds()[segment.from()], trace.timeSeconds()[segment.to() - 1], count));
        }
        events.addAll(review.events());
        rests.addAll(review.rests());
        keepLongestRun(trace, review.segments());
        remarks.addAll(review.remarks());
        review.offset().ifPresent(offset -> {
            Estimate amps = offset.amps();
            offsetSum += amps.value() * offset.restSeconds();
            offsetSeconds += offset.restSeconds();
        });
    }

    private void keepLongestRun(Trace trace, List<Segment> segments) {
        double seconds = segments.stream()
                .filter(segment -> segment.kind() == SegmentKind.RUN)
                .mapToDouble(segment -> segment.durationSeconds(trace))
                .max()
                .orElse(0);
        if (seconds > longestRunSeconds) {
            longestRunSeconds = seconds;
            longestRun = trace;
        }
    }

    /** The part that holds the longest run, to be identified; empty if there is no run. */
    public Optional<Trace> longestRun() {
        return Optional.ofNullable(longestRun);
    }

    /** A segment that goes on where the last one of its kind ended is one with it. */
    private void append(SegmentRecord next) {
        SegmentRecord before = segments.isEmpty() ? null : segments.get(segments.size() - 1);
        if (before != null && before.kind() == next.kind() && before.toSeconds() == next.fromSeconds()) {
            segments.set(
                    segments.size() - 1,
                    new SegmentRecord(
                            before.kind(),
                            before.fromSeconds(),
                            next.toSeconds(),
                            before.count().plus(next.count())));
        } else {
            segments.add(next);
        }
    }

    /**
     * Everything found.
     *
     * @param read what the reader of the file says of it
     */
    public TraceRecord finish(Origin read) {
        List<String> all =
                Stream.concat(read.remarks().stream(), remarks.stream()).toList();
        return new TraceRecord(
                read.fileName(),
                read.sha256(),
                read.fileBytes(),
                read.mapping(),
                samples,
                cells,
                hasCurrent,
                startedAt,
                lastSeconds - firstSeconds,
                offsetSeconds > 0 ? offsetSum / offsetSeconds : null,
                segments,
                events,
                rests,
                List.of(),
                all,
                read.note(),
                "");
    }

    /** What is known of the file itself; see {@link TraceRecord}. */
    public record Origin(
            String fileName, String sha256, long fileBytes, String mapping, List<String> remarks, String note) {}

    private static Trace join(Trace sample, Trace part) {
        double[][] cellVolts = new double[part.cells()][];
        for (int cell = 0; cell < cellVolts.length; cell++) {
            cellVolts[cell] = join(sample.cellVolts()[cell], part.cellVolts()[cell]);
        }
        boolean warmth = sample.hasTemperature() && part.hasTemperature();
        return new Trace(
                join(sample.timeSeconds(), part.timeSeconds()),
                part.hasVolts() ? join(sample.packVolts(), part.packVolts()) : part.packVolts(),
                part.hasCurrent() ? join(sample.currentAmps(), part.currentAmps()) : part.currentAmps(),
                cellVolts,
                warmth ? join(sample.temperatureKelvins(), part.temperatureKelvins()) : new double[0],
                part.startedAt());
    }

    private static double[] join(double[] first, double[] second) {
        return DoubleStream.concat(DoubleStream.of(first), DoubleStream.of(second))
                .toArray();
    }
}
