package fettle.engine.charge;

import fettle.engine.pack.Assessment;
import fettle.engine.pack.Pack;
import fettle.engine.pack.PresentCapacity;
import fettle.engine.pack.Standing;
import fettle.engine.rule.Limits;
import fettle.engine.rule.Quantity;
import fettle.engine.supply.Charger;
import fettle.engine.supply.Port;
import fettle.engine.supply.Source;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.Step;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * The largest charge current allowed for a pack on one port: the strictest of all limits, each stated.
 *
 * @param charger the charger
 * @param port its port
 * @param amps the current [A]
 * @param binding the limit that decides
 * @param limits every limit, strictest first
 */
record ChargeCurrent(Charger charger, Port port, double amps, Limit binding, List<Limit> limits) {
    /** Part of the source's power that reaches the pack. From memory. */
    private static final double CHARGER_EFFICIENCY = 0.85;

    private static final double COOL_KELVINS = TradeUnit.CELSIUS.toSi(10);
    private static final double HALF = 0.5;

    /**
     * One limit on the current.
     *
     * @param what whose limit, with its figure
     * @param amps the current it allows [A]
     * @param citation where it comes from
     */
    record Limit(String what, double amps, Citation citation) {}

    static ChargeCurrent of(Assessment assessment, Limits rules, Charger charger, Port port, @Nullable Source source) {
        Pack pack = assessment.pack();
        double fullVolts = pack.cellsInSeries() * rules.si(Quantity.CHARGE_LIMIT);
        List<Limit> limits = new ArrayList<>();
        limits.add(ofPack(pack, rules));
        limits.add(new Limit("port " + amps(port.maxAmps()), port.maxAmps(), RATING));
        limits.add(ofPower("port " + watts(port.maxWatts()), port.maxWatts(), fullVolts));
        if (charger.totalWatts() != null) {
            limits.add(ofPower("charger " + watts(charger.totalWatts()), charger.totalWatts(), fullVolts));
        }
        if (source != null) {
            limits.add(ofPower(
                    "source " + source.name() + " " + watts(source.maxWatts()) + " × 85 %",
                    source.maxWatts() * CHARGER_EFFICIENCY,
                    fullVolts));
        }
        ofMeasured(assessment, rules, limits);
        double usualAmps =
                assessment.capacity().plannedShare() * pack.ampsOfRate(rules.si(Quantity.DEFAULT_CHARGE_RATE));
        ofCondition(assessment, usualAmps, limits);
        limits.sort(Comparator.comparingDouble(Limit::amps));
        return new ChargeCurrent(charger, port, limits.get(0).amps(), limits.get(0), limits);
    }

    /** Printed so that it is never above the limit: rounded down. */
    String print() {
        return printDown(amps);
    }

    Step step(Pack pack) {
        return new Step(
                "charge current for " + pack.tag() + " on " + charger.name() + " port " + port.number(),
                "the strictest of all limits; power limits are divided by the pack's full volts",
                limits.stream()
                        .map(limit -> limit.what() + " → " + printDown(limit.amps()))
                        .toList(),
                print() + " because of " + binding.what(),
                binding.citation());
    }

    private static final Citation RATING = Citation.commonPractice("rating as registered by its keeper");

    private static Limit ofPack(Pack pack, Limits rules) {
        Double rating = pack.chargeRatingAmps();
        if (rating != null) {
            return new Limit("pack rating " + amps(rating), rating, RATING);
        }
        double rate = rules.si(Quantity.DEFAULT_CHARGE_RATE);
        double allowed = pack.ampsOfRate(rate);
        return new Limit(
                String.format(Locale.ROOT, "%.1fC where no rating is known (%s)", rate, amps(allowed)),
                allowed,
                rules.rule(Quantity.DEFAULT_CHARGE_RATE).citation());
    }

    /** The same C of what the pack holds today: less than the label's where it has faded. */
    private static void ofMeasured(Assessment assessment, Limits rules, List<Limit> limits) {
        PresentCapacity present = assessment.capacity();
        if (!present.measured() || present.plannedShare() >= 1) {
            return;
        }
        Limit label = ofPack(assessment.pack(), rules);
        limits.add(new Limit(
                String.format(
                        Locale.ROOT,
                        "%.1fC of the %s it was measured to hold",
                        label.amps() / assessment.pack().ampsOfRate(1),
                        TradeUnit.MILLIAMPERE_HOUR.print(present.plannedCoulombs(), 0)),
                label.amps() * present.plannedShare(),
                Citation.commonPractice("a rate is of what the pack holds, not of what its label says")));
    }

    private static Limit ofPower(String what, double watts, double fullVolts) {
        return new Limit(what, watts / fullVolts, RATING);
    }

    private static void ofCondition(Assessment assessment, double usualAmps, List<Limit> limits) {
        Double kelvins = assessment.temperatureKelvins();
        if (kelvins != null
                && kelvins < COOL_KELVINS
                && assessment.pack().chemistry().isLithium()) {
            limits.add(new Limit(
                    "temperature " + TradeUnit.CELSIUS.print(kelvins, 0) + ": half the usual current below 10 °C",
                    HALF * usualAmps,
                    Citation.published("JEITA profile, 20 April 2007, as reported by a charger-chip maker")));
        }
        if (assessment.findings().stream().anyMatch(finding -> finding.standing() == Standing.LIMITED)) {
            limits.add(new Limit(
                    "condition: half the usual current for a limited pack",
                    HALF * usualAmps,
                    Citation.commonPractice("tired packs are charged gently")));
        }
    }

    private static String amps(double amps) {
        return TradeUnit.AMPERE.print(amps, 1);
    }

    private static String watts(double watts) {
        return TradeUnit.WATT.print(watts, 0);
    }

    /** A current rounded down, so that what is printed never passes the limit. */
    static String printDown(double amps) {
        double step = amps < 1 ? 100 : 10;
        return TradeUnit.AMPERE.print(Math.floor(amps * step + 1e-9) / step, amps < 1 ? 2 : 1);
    }
}
