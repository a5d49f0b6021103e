package fettle.engine.supply;

import org.jspecify.annotations.Nullable;

/**
 * One output of a charger.
 *
 * @param number 1, 2, … as marked on the charger
 * @param maxAmps largest charge current [A], &gt; 0
 * @param maxWatts largest charge power [W], &gt; 0
 * @param maxCells most cells in series it balances, ≥ 1
 * @param bleedAmps balance bleed current per cell [A]; {@code null} if not stated
 * @param dischargeWatts largest discharge power [W]; {@code null} if it cannot discharge
 */
public record Port(
        int number,
        double maxAmps,
        double maxWatts,
        int maxCells,
        @Nullable Double bleedAmps,
        @Nullable Double dischargeWatts) {}
