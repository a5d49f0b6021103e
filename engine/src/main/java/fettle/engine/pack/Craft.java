package fettle.engine.pack;

import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;
import org.jspecify.annotations.Nullable;

/**
 * A craft that uses packs.
 *
 * @param name its name
 * @param kind what it is
 * @param cellsInSeries cells it takes; {@code null} if several fit
 * @param connector connector it takes; may be empty
 * @param typicalAmps typical current [A]; {@code null} if not known
 * @param peakAmps peak current [A]; {@code null} if not known
 * @param keeper who keeps it; may be empty
 * @param note free text
 */
public record Craft(
        String name,
        CraftKind kind,
        @Nullable Integer cellsInSeries,
        String connector,
        @Nullable Double typicalAmps,
        @Nullable Double peakAmps,
        String keeper,
        String note) {
    public Craft {
        Faults faults = new Faults();
        if (name.isBlank()) {
            faults.add("name", "the craft has no name. Give it the name you use.");
        }
        if (cellsInSeries != null && (cellsInSeries < 1 || cellsInSeries > 24)) {
            faults.add(
                    "cellsInSeries",
                    "cells in series are " + cellsInSeries + "; expected 1 to 24. Leave it empty if several fit.");
        }
        faults.range(
                "typicalAmps",
                "typical current",
                typicalAmps,
                TradeUnit.AMPERE,
                0.01,
                1_000,
                "Leave it empty if not known.");
        faults.range(
                "peakAmps", "peak current", peakAmps, TradeUnit.AMPERE, 0.01, 2_000, "Leave it empty if not known.");
        faults.refuse();
    }
}
