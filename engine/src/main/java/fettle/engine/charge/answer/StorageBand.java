package fettle.engine.charge.answer;

import fettle.engine.cell.DefaultCurves;
import fettle.engine.cell.RestCurve;
import fettle.engine.pack.model.CellModel;
import fettle.engine.pack.model.PackModel;
import fettle.engine.rule.Limits;
import fettle.engine.rule.Quantity;

/**
 * The storage band as charge.
 *
 * @param low its lower edge, a fraction
 * @param high its upper edge, a fraction
 */
record StorageBand(double low, double high) {
    static StorageBand of(PackModel pack, Limits limits) {
        RestCurve curve = DefaultCurves.of(pack.chemistry());
        return new StorageBand(
                curve.charge(limits.si(Quantity.STORAGE_LOW)), curve.charge(limits.si(Quantity.STORAGE_HIGH)));
    }

    /**
     * Charge to draw [C], negative to put in: until no cell is above the band, but none below it; from below, until no
     * cell is below it, but none above.
     */
    double coulombsToDraw(PackModel pack) {
        double mostAbove = extreme(pack, high, true);
        double leastBelow = extreme(pack, low, false);
        if (mostAbove > 0) {
            return Math.max(0, Math.min(mostAbove, leastBelow));
        }
        return leastBelow < 0 ? Math.min(0, Math.max(leastBelow, mostAbove)) : 0;
    }

    private static double extreme(PackModel pack, double edge, boolean highest) {
        var above = pack.cells().stream().mapToDouble(cell -> above(cell, edge));
        return (highest ? above.max() : above.min()).orElseThrow();
    }

    private static double above(CellModel cell, double edge) {
        return (cell.chargeFraction() - edge) * cell.capacityCoulombs();
    }
}
