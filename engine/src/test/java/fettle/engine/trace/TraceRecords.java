package fettle.engine.trace;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Records of traces for tests, without a file behind them. */
public final class TraceRecords {
    /** A run of so many coulombs between two rests of an hour, 900 s long, on four cells alike. */
    public static TraceRecord run(@Nullable Instant startedAt, double coulombs, double restedAt, double restsAt) {
        Count out = new Count(coulombs, 0, coulombs * 15, 0, 900, 0);
        return record(
                startedAt,
                List.of(
                        new SegmentRecord(SegmentKind.REST, 0, 3600, still(3600)),
                        new SegmentRecord(SegmentKind.RUN, 3600, 4500, out),
                        new SegmentRecord(SegmentKind.REST, 4500, 8100, still(3600))),
                List.of(
                        rest(1, 3600, restedAt),
                        rest(2, 3600, restedAt),
                        rest(3, 3600, restedAt),
                        rest(4, 3600, restedAt),
                        rest(1, 8100, restsAt),
                        rest(2, 8100, restsAt),
                        rest(3, 8100, restsAt),
                        rest(4, 8100, restsAt)),
                List.of());
    }

    public static TraceRecord record(
            @Nullable Instant startedAt, List<SegmentRecord> segments, List<TraceRest> rests, List<TraceEvent> events) {
        double end = segments.isEmpty() ? 1 : segments.get(segments.size() - 1).toSeconds();
        return new TraceRecord(
                "flight.csv",
                "00",
                1,
                "{}",
                100,
                4,
                true,
                startedAt,
                end,
                null,
                segments,
                events,
                rests,
                List.of(),
                List.of(),
                "",
                "");
    }

    /** The same with a resistance of cell 1. */
    public static TraceRecord resisting(Instant startedAt, double ohms) {
        return record(startedAt, List.of(), List.of(), List.of())
                .withResistances(List.of(new TraceResistance(1, ohms, 0.02 * ohms)));
    }

    public static TraceEvent event(EventKind kind, int cell, double worst, double limit) {
        return new TraceEvent(kind, cell, 100, 2, worst, limit);
    }

    private static TraceRest rest(int cell, double at, double volts) {
        return new TraceRest(cell, at, 3600, volts, null);
    }

    private static Count still(double seconds) {
        return new Count(0, 0, 0, 0, seconds, 0);
    }

    private TraceRecords() {}
}
