package fettle.engine.trace;

import java.util.Locale;

/**
 * One thing that went wrong in a trace.
 *
 * @param kind what
 * @param cell the cell it was, from 1; 0 for the pack as a whole
 * @param atSeconds when it began, on the trace's clock [s]
 * @param durationSeconds how long it held [s]; 0 if only one sample shows it
 * @param worstSi the worst value, SI
 * @param limitSi the limit it passed, or what it was before, SI
 */
public record TraceEvent(
        EventKind kind, int cell, double atSeconds, double durationSeconds, double worstSi, double limitSi) {

    /** E.g. {@code cell 3 below its lowest volts under load for 4.2 s: 2.712 V, limit 3.000 V}. */
    public String sentence() {
        String whose = cell == 0 ? "pack" : "cell " + cell;
        String lasting = durationSeconds > 0 ? String.format(Locale.ROOT, " for %.1f s", durationSeconds) : "";
        String against = kind == EventKind.RESISTANCE_STEP || kind == EventKind.CELL_COLLAPSE
                ? (kind == EventKind.RESISTANCE_STEP ? ", before " : ", the others ")
                : ", limit ";
        return whose + " " + kind.label() + lasting + ": " + kind.print(worstSi) + against + kind.print(limitSi);
    }
}
