package fettle.workshop;

import fettle.engine.trace.Count;
import fettle.engine.trace.SegmentKind;
import fettle.engine.trace.TraceRecord;
import fettle.engine.units.Counted;
import fettle.engine.units.TradeUnit;

/** Traces in words. */
public final class TraceWords {
    /** Half a milliampere-hour: what prints as more than 0 mAh. */
    private static final double LEAST_TOLD_COULOMBS = 1.8;

    private TraceWords() {}

    /** E.g. {@code added trace flight.csv of P07: 1 run, 1520 mAh out, 2 events}. */
    static String added(String tag, TraceRecord trace) {
        long runs = trace.segments().stream()
                .filter(segment -> segment.kind() == SegmentKind.RUN)
                .count();
        int events = trace.events().size();
        return "added trace " + trace.fileName() + " of " + tag + ": " + Counted.of(runs, "run") + ", "
                + passed(trace.hasCurrent(), trace.total()) + ", " + Counted.of(events, "event");
    }

    /** E.g. {@code looked into 2 events of trace 3 of P07 (flight.csv): cells read well after a day}. */
    static String acknowledged(KeptTrace trace, String finding) {
        int events = trace.record().events().size();
        return "looked into " + (events == 1 ? "one event" : events + " events") + " of trace " + trace.id() + " of "
                + trace.pack() + " (" + trace.record().fileName() + "): " + finding;
    }

    /** What passed, e.g. {@code 1520 mAh out, 40 mAh in}; the way nothing passed is left out. */
    public static String passed(boolean hasCurrent, Count count) {
        if (!hasCurrent) {
            return "no current logged";
        }
        String out = TradeUnit.MILLIAMPERE_HOUR.print(count.outCoulombs(), 0) + " out";
        String in = TradeUnit.MILLIAMPERE_HOUR.print(count.inCoulombs(), 0) + " in";
        if (count.inCoulombs() < LEAST_TOLD_COULOMBS) {
            return out;
        }
        return count.outCoulombs() < LEAST_TOLD_COULOMBS ? in : out + ", " + in;
    }
}
