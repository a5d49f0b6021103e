package fettle.engine.trace;

import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.PackHistory;
import fettle.engine.pack.Run;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * The uses of a pack that only its traces tell of, as entries of its record: after a run that was logged the charge is no
 * longer what the last check said.
 *
 * <p>A use noted by hand within half an hour of a trace is taken to be the logged one, and not told twice. Traces without a
 * date cannot be placed in the record and are left out.
 */
public final class TraceUses {
    private static final Duration NEAR = Duration.ofMinutes(30); // clocks differ, and notes come late
    private static final double LEAST_RUN_SECONDS = 6; // a tenth of a minute, the shortest run the record takes
    private static final String NOTE = "from a trace";

    private TraceUses() {}

    /** The record with the uses of its traces put among those noted. */
    public static PackHistory joined(PackHistory noted, List<TraceRecord> traces) {
        List<ChargeRecord> charges = new ArrayList<>(noted.charges());
        List<Run> runs = new ArrayList<>(noted.runs());
        for (TraceRecord trace : traces) {
            Instant startedAt = trace.startedAt();
            if (startedAt == null || !trace.hasCurrent()) {
                continue;
            }
            if (noted.charges().stream().noneMatch(charge -> isNear(trace, startedAt, charge.endedAt()))) {
                charges.addAll(charges(trace, startedAt));
            }
            if (noted.runs().stream().noneMatch(run -> isNear(trace, startedAt, run.endedAt()))) {
                runs.addAll(runs(trace, startedAt, noted.pack().cellsInSeries()));
            }
        }
        charges.sort(Comparator.comparing(ChargeRecord::endedAt));
        runs.sort(Comparator.comparing(Run::endedAt));
        return new PackHistory(noted.pack(), noted.checks(), charges, runs);
    }

    /** The instant of a time on a trace's clock. */
    public static Instant at(Instant startedAt, double seconds) {
        return startedAt.plusMillis(Math.round(1000 * seconds));
    }

    private static boolean isNear(TraceRecord trace, Instant startedAt, Instant endedAt) {
        return !endedAt.isBefore(startedAt.minus(NEAR))
                && !endedAt.isAfter(at(startedAt, trace.durationSeconds()).plus(NEAR));
    }

    private static List<ChargeRecord> charges(TraceRecord trace, Instant startedAt) {
        return blocks(trace, segment -> segment.kind().isCharge(), segment -> segment.kind() == SegmentKind.RUN)
                .stream()
                .filter(block -> block.count().inCoulombs() > 0)
                .map(block -> new ChargeRecord(
                        at(startedAt, block.toSeconds()), block.count().inCoulombs(), null, null, NOTE))
                .toList();
    }

    private static List<Run> runs(TraceRecord trace, Instant startedAt, int cellsInSeries) {
        return blocks(
                        trace,
                        segment -> segment.kind() == SegmentKind.RUN,
                        segment -> segment.kind().isCharge())
                .stream()
                .filter(block -> block.loadedSeconds() >= LEAST_RUN_SECONDS)
                .map(block -> new Run(
                        at(startedAt, block.toSeconds()),
                        "",
                        block.loadedSeconds(),
                        null,
                        remainingVolts(trace, block, cellsInSeries),
                        null,
                        NOTE))
                .toList();
    }

    /** Pack volts of the rest that follows a run, where there is one before the next use. */
    private static @Nullable Double remainingVolts(TraceRecord trace, Block run, int cellsInSeries) {
        List<TraceRest> after = trace.rests().stream()
                .filter(rest -> rest.atSeconds() > run.toSeconds() && rest.atSeconds() <= run.nextSeconds())
                .toList();
        if (after.isEmpty()) {
            return null;
        }
        double last = after.get(after.size() - 1).atSeconds();
        return cellsInSeries
                * after.stream()
                        .filter(rest -> rest.atSeconds() >= last)
                        .mapToDouble(TraceRest::volts)
                        .average()
                        .orElseThrow();
    }

    /** Segments of one sort with nothing of the other between them. */
    private record Block(double toSeconds, double nextSeconds, double loadedSeconds, Count count) {}

    private static List<Block> blocks(
            TraceRecord trace, Predicate<SegmentRecord> ofSort, Predicate<SegmentRecord> ends) {
        List<Block> blocks = new ArrayList<>();
        Block open = null;
        for (SegmentRecord segment : trace.segments()) {
            if (ofSort.test(segment)) {
                Count before = open == null ? Count.NOTHING : open.count();
                double loaded = open == null ? 0 : open.loadedSeconds();
                open = new Block(
                        segment.toSeconds(),
                        Double.POSITIVE_INFINITY,
                        loaded + segment.durationSeconds(),
                        before.plus(segment.count()));
            } else if (open != null && ends.test(segment)) {
                blocks.add(new Block(open.toSeconds(), segment.fromSeconds(), open.loadedSeconds(), open.count()));
                open = null;
            }
        }
        if (open != null) {
            blocks.add(open);
        }
        return blocks;
    }
}
