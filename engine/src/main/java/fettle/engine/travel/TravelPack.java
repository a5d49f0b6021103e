package fettle.engine.travel;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.Pack;
import fettle.engine.pack.Standing;
import fettle.engine.units.TradeUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/**
 * A pack that is to travel.
 *
 * @param pack the pack
 * @param standing its standing today; grounded and retired packs never fly
 * @param carriedAs how it is carried
 * @param printedJoules watt-hours printed on its label [J], which count before volts × capacity; {@code null} if none
 * @param chargeFraction its charge now, 0 … 1; {@code null} if not known
 */
public record TravelPack(
        Pack pack,
        Standing standing,
        CarriedAs carriedAs,
        @Nullable Double printedJoules,
        @Nullable Double chargeFraction) {
    private static final int MILLIAMPERE_HOUR_DECIMALS = 6;

    /** The rating [Wh]: what the label prints, or rated capacity × nominal volts (49 CFR 171.8), to the last decimal. */
    public BigDecimal wattHours() {
        return printedJoules != null ? exact(TradeUnit.WATT_HOUR.fromSi(printedJoules)) : wattHours(pack.chemistry());
    }

    /**
     * The largest rating it may have [Wh]: while nobody has confirmed the chemistry of a lithium pack, the rating of the
     * lithium chemistry with the highest nominal volts.
     */
    BigDecimal mostWattHours() {
        boolean sure = printedJoules != null
                || pack.identity() == Pack.Identity.CONFIRMED
                || !pack.chemistry().isLithium();
        return sure ? wattHours() : wattHours(Chemistry.LIHV).max(wattHours());
    }

    /** Nominal volts of the whole pack [V]. */
    double nominalVolts() {
        return pack.chemistry().nominalVolts() * pack.cellsInSeries();
    }

    private BigDecimal wattHours(Chemistry chemistry) {
        return exact(TradeUnit.MILLIAMPERE_HOUR.fromSi(pack.ratedCapacityCoulombs()))
                .multiply(BigDecimal.valueOf(chemistry.nominalVolts()))
                .multiply(BigDecimal.valueOf(pack.cellsInSeries()))
                .movePointLeft(3);
    }

    /** A typed decimal as it was typed: units in between must not push 100 Wh to the wrong side of its limit. */
    private static BigDecimal exact(double value) {
        return new BigDecimal(value, MathContext.DECIMAL64).setScale(MILLIAMPERE_HOUR_DECIMALS, RoundingMode.HALF_UP);
    }
}
