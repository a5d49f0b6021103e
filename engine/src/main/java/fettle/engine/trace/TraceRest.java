package fettle.engine.trace;

import org.jspecify.annotations.Nullable;

/**
 * Volts of one cell at the end of a rest in a trace.
 *
 * @param cell the cell, from 1; 0 for the mean cell where cells were not logged
 * @param atSeconds when, on the trace's clock [s]
 * @param restedSeconds how long nothing had flowed by then [s]; at least, where the log begins or is cut within the rest
 * @param volts mean over the last ten seconds [V]
 * @param kelvins the pack's temperature then [K]; {@code null} if not logged
 */
public record TraceRest(
        int cell,
        double atSeconds,
        double restedSeconds,
        double volts,
        @Nullable Double kelvins) {}
