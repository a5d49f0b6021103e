package fettle.workshop.outing;

import fettle.engine.charge.PortCurrent;
import fettle.engine.outing.Feed;
import fettle.engine.outing.Outing;
import fettle.engine.outing.Spot;
import fettle.engine.rule.Quantity;
import fettle.engine.supply.Charger;
import fettle.engine.supply.Port;
import fettle.engine.supply.Source;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import fettle.planner.problem.ChargeWay;
import fettle.planner.problem.OutingProblem;
import fettle.planner.problem.Place;
import fettle.planner.problem.PlanCharger;
import fettle.planner.problem.PlanPort;
import fettle.planner.problem.PowerSource;
import fettle.planner.problem.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What feeds and charges on an outing: sources, chargers, ports, and every way each pack can be charged within its limits. */
final class MeansMaker {
    /** Charging indoors happens at room temperature [K]. */
    private static final double ROOM_KELVINS = 293.15;

    private static final double GENTLE = 0.5;

    private final Outing outing;
    private final DayKit kit;
    private final DayClock clock;
    private final int horizon;
    private final List<String> remarks;
    private final List<String> inputs;
    private final Map<String, PowerSource> sources = new LinkedHashMap<>();
    private final List<PlanCharger> chargers = new ArrayList<>();
    private final List<PlanPort> ports = new ArrayList<>();
    private final List<ChargeWay> ways = new ArrayList<>();
    private final ChargeCurves atHome = new ChargeCurves(ROOM_KELVINS);
    private final ChargeCurves atField;

    MeansMaker(Outing outing, DayKit kit, DayClock clock, int horizon, List<String> remarks, List<String> inputs) {
        this.outing = outing;
        this.kit = kit;
        this.clock = clock;
        this.horizon = horizon;
        this.remarks = remarks;
        this.inputs = inputs;
        this.atField = new ChargeCurves(outing.ambientKelvins());
    }

    OutingProblem.Means of(List<PackAtHand> packs) {
        for (Feed feed : outing.feeds()) {
            Charger charger = kit.charger(feed.charger())
                    .orElseThrow(() -> new InputException(
                            "feeds",
                            feed.charger() + " is no charger in use. Add it: charger add, or take its line out."));
            Source source = kit.source(feed.source())
                    .orElseThrow(() -> new InputException(
                            "feeds",
                            feed.source() + " is no source in use. Add it: source add, or take its line out."));
            add(feed, charger, source, packs);
        }
        double error = Math.max(atHome.greatestErrorFraction(), atField.greatestErrorFraction());
        if (error > 0) {
            inputs.add("charge times are at most " + TradeUnit.PERCENT.print(error, 1) + " longer than simulated");
        }
        return new OutingProblem.Means(List.copyOf(sources.values()), chargers, ports, ways);
    }

    private void add(Feed feed, Charger charger, Source source, List<PackAtHand> packs) {
        Optional<Span> span = span(feed);
        if (span.isEmpty() && feed.from() != null) {
            remarks.add(feed.source() + " gives no power any more.");
            return;
        }
        String sourceName = source.name() + " at " + at(feed.spot());
        sources.merge(sourceName, source(sourceName, feed, source, span), MeansMaker::longer);
        Double shared = charger.totalWatts();
        String chargerName = charger.name() + " at " + at(feed.spot());
        chargers.add(new PlanCharger(
                chargerName, sourceName, shared == null ? null : shared.intValue(), feed.efficiencyFraction()));
        inputs.add(chargerName + ": fed by " + source.name() + ", " + TradeUnit.WATT.print(source.maxWatts(), 0)
                + ", efficiency " + TradeUnit.PERCENT.print(feed.efficiencyFraction(), 0));
        for (Port port : charger.ports()) {
            String portName = portName(charger, port, feed.spot());
            ports.add(new PlanPort(portName, chargerName, (int) Math.floor(port.maxWatts())));
            packs.forEach(hand -> addWays(hand, charger, port, source, feed, portName));
        }
    }

    private String portName(Charger charger, Port port, Spot spot) {
        boolean both = outing.feeds().stream()
                        .filter(feed -> feed.charger().equals(charger.name()))
                        .count()
                > 1;
        return charger.name() + " port " + port.number() + (both ? " at " + at(spot) : "");
    }

    /** The name of a source as its keeper calls it. */
    static String bareName(PowerSource source) {
        String place = " at " + at(source.place() == Place.HOME ? Spot.HOME : Spot.FIELD);
        return source.name().substring(0, source.name().length() - place.length());
    }

    private static String at(Spot spot) {
        return spot == Spot.HOME ? "home" : "the field";
    }

    private Optional<Span> span(Feed feed) {
        if (feed.from() == null || feed.until() == null) {
            return Optional.empty();
        }
        int from = Math.max(0, clock.minuteNotBefore(feed.from()));
        int to = Math.min(horizon, clock.minuteNotAfter(feed.until()));
        return to > from ? Optional.of(new Span(from, to)) : Optional.empty();
    }

    private static PowerSource source(String name, Feed feed, Source source, Optional<Span> span) {
        Double joules = source.energyJoules();
        return new PowerSource(
                name,
                PlanningCases.place(feed.spot()),
                (int) Math.floor(source.maxWatts()),
                joules == null ? null : (int) Math.floor(TradeUnit.WATT_HOUR.fromSi(joules)),
                span.map(List::of).orElse(List.of()));
    }

    /** Two lines name one source: the spans of both hold for it. */
    private static PowerSource longer(PowerSource one, PowerSource other) {
        boolean always = one.available().isEmpty() || other.available().isEmpty();
        List<Span> spans = new ArrayList<>();
        if (!always) {
            spans.addAll(one.available());
            other.available().stream().filter(span -> !spans.contains(span)).forEach(spans::add);
        }
        return new PowerSource(one.name(), one.place(), one.limitWatts(), one.energyWattHours(), spans);
    }

    private void addWays(PackAtHand hand, Charger charger, Port port, Source source, Feed feed, String portName) {
        double kelvins = feed.spot() == Spot.HOME ? ROOM_KELVINS : outing.ambientKelvins();
        if (kelvins < hand.limits().si(Quantity.CHARGE_COLDEST)
                || kelvins > hand.limits().si(Quantity.CHARGE_WARMEST)) {
            String remark = hand.tag() + " is not charged at " + at(feed.spot()) + ": at "
                    + TradeUnit.CELSIUS.print(kelvins, 0) + " it may be charged only between "
                    + hand.limits().rule(Quantity.CHARGE_COLDEST).print() + " and "
                    + hand.limits().rule(Quantity.CHARGE_WARMEST).print() + ".";
            if (!remarks.contains(remark)) {
                remarks.add(remark);
            }
            return;
        }
        ChargeCurves curves = feed.spot() == Spot.HOME ? atHome : atField;
        PortCurrent.charge(hand.assessment().at(kelvins), hand.limits(), charger, port, source)
                .ifPresent(most -> {
                    ways.add(way(hand, portName, most.amps(), curves, 1));
                    double gentle = Math.floor(most.amps() * GENTLE * 100) / 100;
                    if (gentle > 0) {
                        ways.add(way(hand, portName, gentle, curves, 0));
                    }
                });
        PortCurrent.discharge(hand.pack(), charger, port)
                .ifPresent(most -> ways.add(ChargeWay.single(
                        hand.tag() + " down on " + portName + " at " + amps(most.amps()),
                        hand.tag(),
                        portName,
                        most.amps(),
                        ChargeCurves.emptying(hand, most.amps()),
                        0)));
    }

    private static ChargeWay way(PackAtHand hand, String portName, double amps, ChargeCurves curves, int stress) {
        return ChargeWay.single(
                hand.tag() + " on " + portName + " at " + amps(amps),
                hand.tag(),
                portName,
                amps,
                curves.filling(hand, amps),
                stress);
    }

    private static String amps(double amps) {
        return TradeUnit.AMPERE.print(amps, 2);
    }
}
