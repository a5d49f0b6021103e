package fettle.workshop;

import fettle.engine.trace.Count;
import fettle.engine.trace.SegmentKind;
import fettle.engine.trace.TraceRecord;
import fettle.engine.units.TradeUnit;

/** Traces in the journal's words. */
final class TraceWords {
    private TraceWords() {}

    /** E.g. {@code added trace flight.csv of P07: 1 run, 1520 mAh out, 0 mAh in, 2 events}. */
    static String added(String tag, TraceRecord trace) {
        long runs = trace.segments().stream()
                .filter(segment -> segment.kind() == SegmentKind.RUN)
                .count();
        int events = trace.events().size();
        return "added trace " + trace.fileName() + " of " + tag + ": " + runs + (runs == 1 ? " run, " : " runs, ")
                + charge(trace) + ", " + events + (events == 1 ? " event" : " events");
    }

    private static String charge(TraceRecord trace) {
        if (!trace.hasCurrent()) {
            return "no current logged";
        }
        Count total = trace.total();
        return TradeUnit.MILLIAMPERE_HOUR.print(total.outCoulombs(), 0) + " out, "
                + TradeUnit.MILLIAMPERE_HOUR.print(total.inCoulombs(), 0) + " in";
    }
}
