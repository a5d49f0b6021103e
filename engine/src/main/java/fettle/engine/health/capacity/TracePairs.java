package fettle.engine.health.capacity;

import fettle.engine.cell.RestCurve;
import fettle.engine.pack.MeterAccuracy;
import fettle.engine.pack.Pack;
import fettle.engine.trace.Count;
import fettle.engine.trace.SegmentRecord;
import fettle.engine.trace.TraceRecord;
import fettle.engine.trace.TraceRest;
import fettle.engine.trace.TraceUses;
import fettle.engine.units.TradeUnit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Evidence on capacity in traces: charge counted between two rests, and the change of rest charge it made.
 *
 * <p>What the current shows at rest is taken off the count; a part of it stays in doubt. Stretches of which the logger saw
 * less than 98 % are left out, and traces without a date: when they were is not known. Lithium packs only.
 */
public final class TracePairs {
    private static final double LEAST_CHANGE = 0.15; // below, rest volts say too little
    private static final double MOST_UNSEEN_SHARE = 0.02;
    private static final double LEAST_DEVIATION_COULOMBS = TradeUnit.MILLIAMPERE_HOUR.toSi(2); // of a count's ends
    private static final double COUNT_SHARE_DEVIATION = 0.003; // between samples. From memory
    private static final double OFFSET_SHARE_DEVIATION = 0.3; // an offset drifts by this share of itself. From memory

    private TracePairs() {}

    /**
     * Pairs of one cell, oldest first.
     *
     * @param cell the cell, from 1; {@code null} for the pack's mean cell
     */
    public static List<CapacityPair> of(
            List<TraceRecord> traces, Pack pack, RestCurve curve, MeterAccuracy meter, @Nullable Integer cell) {
        List<CapacityPair> pairs = new ArrayList<>();
        for (TraceRecord trace : traces) {
            Instant startedAt = trace.startedAt();
            if (startedAt != null && trace.hasCurrent() && pack.chemistry().isLithium()) {
                addPairs(trace, readings(trace, startedAt, curve, meter, cell), pairs);
            }
        }
        return pairs;
    }

    /** @param atSeconds when, on the trace's clock [s] */
    private record Placed(double atSeconds, RestReading reading) {}

    private static List<Placed> readings(
            TraceRecord trace, Instant startedAt, RestCurve curve, MeterAccuracy meter, @Nullable Integer cell) {
        TreeMap<Double, List<TraceRest>> rests = new TreeMap<>();
        trace.rests().stream()
                .filter(rest -> cell == null || rest.cell() == cell)
                .forEach(rest -> rests.computeIfAbsent(rest.atSeconds(), any -> new ArrayList<>())
                        .add(rest));
        List<Placed> readings = new ArrayList<>();
        rests.forEach((at, cells) -> readings.add(new Placed(
                at,
                RestReading.of(
                        TraceUses.at(startedAt, at),
                        cells.stream().map(TraceRest::volts).toList(),
                        cells.get(0).restedSeconds(),
                        curve,
                        meter))));
        return readings;
    }

    /** Each rest is paired with the last one before it that is far enough away in charge. */
    private static void addPairs(TraceRecord trace, List<Placed> rests, List<CapacityPair> pairs) {
        int start = 0;
        for (int end = 1; end < rests.size(); end++) {
            double change = rests.get(end).reading().charge()
                    - rests.get(start).reading().charge();
            if (Math.abs(change) >= LEAST_CHANGE && addPair(trace, rests.get(start), rests.get(end), pairs)) {
                start = end;
            }
        }
    }

    private static boolean addPair(TraceRecord trace, Placed from, Placed to, List<CapacityPair> pairs) {
        Count count = trace.segments().stream()
                .filter(segment -> segment.toSeconds() > from.atSeconds() && segment.toSeconds() <= to.atSeconds())
                .map(SegmentRecord::count)
                .reduce(Count.NOTHING, Count::plus);
        double seconds = to.atSeconds() - from.atSeconds();
        Double shown = trace.offsetAmps();
        double offset = (shown == null ? 0 : shown) * count.countedSeconds();
        double change = to.reading().charge() - from.reading().charge();
        double coulombs = -(count.netCoulombs() - offset);
        if (count.unseenSeconds() > MOST_UNSEEN_SHARE * seconds || coulombs * change <= 0) {
            return false;
        }
        double doubt = Math.hypot(LEAST_DEVIATION_COULOMBS, COUNT_SHARE_DEVIATION * coulombs);
        pairs.add(new CapacityPair(
                to.reading().at(),
                change,
                Math.hypot(from.reading().random(), to.reading().random()),
                Math.hypot(from.reading().curve(), to.reading().curve()),
                coulombs,
                Math.hypot(doubt, OFFSET_SHARE_DEVIATION * offset),
                TradeUnit.MILLIAMPERE_HOUR.print(Math.abs(coulombs), 0)
                        + (coulombs > 0 ? " counted in from " : " counted out from ")
                        + TradeUnit.PERCENT.print(from.reading().charge(), 0) + " to "
                        + TradeUnit.PERCENT.print(to.reading().charge(), 0) + " in " + trace.fileName()));
        return true;
    }
}
