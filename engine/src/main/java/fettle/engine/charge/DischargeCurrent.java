package fettle.engine.charge;

import fettle.engine.pack.Pack;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.Step;
import java.util.List;

/**
 * The current at which a port brings a pack down to storage: the least of its discharge power over the pack's nominal
 * volts, the label's discharge current, and 1C.
 *
 * @param place the port
 * @param amps the discharge current [A]
 * @param step how it came about
 */
record DischargeCurrent(Means.Place place, double amps, Step step) {
    private static final Citation GENTLE = Citation.commonPractice("a storage discharge stays at or below 1C");

    private static final double HOUR_SECONDS = 3600;

    /** The current of a port that states a discharge power. */
    static DischargeCurrent of(Pack pack, Means.Place place, double watts) {
        double volts = pack.cellsInSeries() * pack.chemistry().nominalVolts();
        double gentle = pack.ratedCapacityCoulombs() / HOUR_SECONDS;
        Double label = pack.dischargeRatingAmps();
        double amps = Math.min(Math.min(watts / volts, gentle), label == null ? gentle : label);
        return new DischargeCurrent(
                place,
                amps,
                new Step(
                        "discharge current",
                        "least of port power ÷ nominal volts, the label's current and 1C",
                        List.of(
                                "port = " + TradeUnit.WATT.print(watts, 0) + " ÷ " + TradeUnit.VOLT.print(volts, 1)
                                        + " = " + TradeUnit.AMPERE.print(watts / volts, 2),
                                "label = " + (label == null ? "not stated" : TradeUnit.AMPERE.print(label, 1)),
                                "1C = " + TradeUnit.AMPERE.print(gentle, 2)),
                        TradeUnit.AMPERE.print(amps, 2),
                        GENTLE));
    }

    /** "at 0.45 A, about 22 ± 2 min on bench port 1". */
    String print(Estimate coulombs) {
        return "at " + TradeUnit.AMPERE.print(amps, 2) + ", about "
                + TradeUnit.MINUTE.print(coulombs.times(1 / amps), 0) + " on " + place.print();
    }
}
