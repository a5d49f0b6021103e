package fettle.engine.trace;

import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import java.util.Arrays;
import java.util.Locale;

/** Whether a trace can be of a pack at all. */
public final class PackFit {
    /** No lithium, NiMH or lead-acid cell is charged as far past its limit: common practice, no source. */
    private static final double ABOVE_LIMIT_VOLTS = 0.25;

    private static final double HIGH_SHARE = 0.99;

    private PackFit() {}

    /**
     * Refuses a trace whose cells or volts contradict the pack.
     *
     * @param tag the pack's tag, for the refusal
     * @throws InputException if more or fewer cells were logged than the pack has, or its volts fit another cell count
     */
    public static void require(Trace trace, TraceLimits limits, String tag) {
        int cells = limits.cellsInSeries();
        if (trace.cells() > 0 && trace.cells() != cells) {
            throw new InputException(
                    "cells",
                    "the log has " + trace.cells() + (trace.cells() == 1 ? " cell; " : " cells; ") + tag + " has "
                            + cells + " in series. "
                            + (trace.cells() == 2 * cells
                                    ? "If it is of two packs side by side, map the cells of one to cell 1 to " + cells
                                            + " and leave the others unused."
                                    : "Choose the pack it was taken of, or map fewer columns to cells."));
        }
        if (!trace.hasVolts()) {
            return;
        }
        double[] sorted = trace.packVolts().clone();
        Arrays.sort(sorted);
        double high = sorted[(int) (HIGH_SHARE * (sorted.length - 1))];
        double most = cells * (limits.highestCellVolts() + ABOVE_LIMIT_VOLTS);
        double least = cells * limits.lowestCellVolts();
        if (high > most || high < least) {
            throw new InputException(
                    "packVolts",
                    String.format(
                            Locale.ROOT,
                            "the log's volts reach %s, %.2f V a cell for the %d cells of %s; expected %.2f to %.2f V a"
                                    + " cell. Choose the pack it was taken of, or the unit of the volts column.",
                            TradeUnit.VOLT.print(high, 2),
                            high / cells,
                            cells,
                            tag,
                            limits.lowestCellVolts(),
                            limits.highestCellVolts() + ABOVE_LIMIT_VOLTS));
        }
    }
}
