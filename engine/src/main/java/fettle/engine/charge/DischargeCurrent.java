package fettle.engine.charge;

import fettle.engine.pack.Pack;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.Step;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The current at which a port brings a pack down to storage: the strictest of the pack's discharge rating, 1C and the
 * port's discharge power at the pack's nominal volts.
 *
 * @param place the port
 * @param amps the current [A]
 * @param limits every limit, strictest first
 */
record DischargeCurrent(Means.Place place, double amps, List<ChargeCurrent.Limit> limits) {
    private static final double GENTLE_RATE = 1;

    static DischargeCurrent of(Pack pack, Means.Place place, double portWatts) {
        List<ChargeCurrent.Limit> limits = new ArrayList<>();
        double nominalVolts = pack.cellsInSeries() * pack.chemistry().nominalVolts();
        Citation rating = Citation.commonPractice("rating as registered by its keeper");
        limits.add(new ChargeCurrent.Limit(
                "port " + TradeUnit.WATT.print(portWatts, 0) + " at the pack's nominal volts",
                portWatts / nominalVolts,
                rating));
        limits.add(new ChargeCurrent.Limit(
                "1C, gentle",
                pack.ampsOfRate(GENTLE_RATE),
                Citation.commonPractice("a pack is brought to storage gently")));
        Double pledged = pack.dischargeRatingAmps();
        if (pledged != null) {
            limits.add(new ChargeCurrent.Limit("pack rating " + TradeUnit.AMPERE.print(pledged, 1), pledged, rating));
        }
        limits.sort(Comparator.comparingDouble(ChargeCurrent.Limit::amps));
        return new DischargeCurrent(place, limits.get(0).amps(), limits);
    }

    /** Printed so that it is never above the limit: rounded down. */
    String print() {
        return ChargeCurrent.printDown(amps);
    }

    Step step(Pack pack) {
        return new Step(
                "discharge current for " + pack.tag() + " on " + place.print(),
                "the strictest of all limits",
                limits.stream()
                        .map(limit -> limit.what() + " → " + ChargeCurrent.printDown(limit.amps()))
                        .toList(),
                print() + " because of " + limits.get(0).what(),
                limits.get(0).citation());
    }
}
