package fettle.engine.trace;

import fettle.engine.pack.Pack;
import fettle.engine.rule.Limits;
import fettle.engine.rule.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * What a trace of one pack is held against.
 *
 * @param cellsInSeries 1 … 24
 * @param lowestCellVolts lowest volts of a cell under load [V]
 * @param highestCellVolts highest volts of a cell [V]
 * @param dischargeAmps largest current [A]; {@code null} if the label states none
 * @param chargeAmps largest charge current [A]; {@code null} if the label states none
 * @param hottestKelvins warmest the pack may be [K]
 * @param coldestChargeKelvins coldest it may be charged [K]
 * @param warmestChargeKelvins warmest it may be charged [K]
 */
public record TraceLimits(
        int cellsInSeries,
        double lowestCellVolts,
        double highestCellVolts,
        @Nullable Double dischargeAmps,
        @Nullable Double chargeAmps,
        double hottestKelvins,
        double coldestChargeKelvins,
        double warmestChargeKelvins) {

    /** The limits of a pack under the rules that hold for it. */
    public static TraceLimits of(Pack pack, Limits limits) {
        return new TraceLimits(
                pack.cellsInSeries(),
                limits.si(Quantity.LOAD_MINIMUM),
                limits.si(Quantity.CHARGE_LIMIT),
                pack.dischargeRatingAmps(),
                pack.chargeRatingAmps(),
                limits.si(Quantity.TEMPERATURE_LIMIT),
                limits.si(Quantity.CHARGE_COLDEST),
                limits.si(Quantity.CHARGE_WARMEST));
    }
}
