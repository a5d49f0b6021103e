package fettle.engine.supply.receiver;

import fettle.engine.supply.wire.Lead;
import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Works out what a receiver's supply does in each scenario.
 *
 * <p>Formula: receiver volts = output − I·(source + feed lead); servo volts = receiver volts − its own current · its lead.
 * <p>Leaves out: the fraction of a second in which a servo starts, when it takes its stall current whatever the load.
 */
public final class PowerAssessment {
    private static final Citation LAWS = Citation.published(
            "Ohm's law; copper by IEC 60028, sections by ASTM B258 (formula from memory), stranding by IEC 60228");

    private PowerAssessment() {}

    public static PowerBudget of(ReceiverSupply supply) {
        List<ScenarioPower> scenarios = Arrays.stream(Scenario.values())
                .map(scenario -> power(supply, scenario))
                .toList();
        return new PowerBudget(
                scenarios,
                PowerWarnings.of(supply, scenarios),
                Improvements.of(supply),
                new Working(scenarios.stream().map(power -> step(supply, power)).toList()));
    }

    static ScenarioPower power(ReceiverSupply supply, Scenario scenario) {
        double amps = supply.amps(scenario);
        Estimate receiver = less(supply.regulator().volts(amps), supply.feed(), amps);
        ServoDraw lowest = supply.servos().stream()
                .max(Comparator.comparingDouble(servo -> servo.lead().ohms().value() * supply.amps(servo, scenario)))
                .orElseThrow();
        Estimate drop = lowest.lead().dropVolts(supply.amps(lowest, scenario));
        return new ScenarioPower(
                scenario,
                amps,
                receiver,
                new Estimate(receiver.value() - supply.resetVolts(), receiver.standardDeviation(), receiver.drivers()),
                supply.regulator().heatWatts(amps),
                lowest.name(),
                Estimate.ofIndependent(
                        receiver.value() - drop.value(),
                        List.of(
                                new Driver("feed lead", receiver.standardDeviation()),
                                new Driver("servo lead", drop.standardDeviation()))));
    }

    private static Estimate less(double volts, Lead lead, double amps) {
        Estimate drop = lead.dropVolts(amps);
        return new Estimate(volts - drop.value(), drop.standardDeviation(), drop.drivers());
    }

    private static Step step(ReceiverSupply supply, ScenarioPower power) {
        return new Step(
                power.scenario().label(),
                "receiver = output − I · (source + 2·ℓ·r + contacts)",
                List.of(
                        "I = " + TradeUnit.AMPERE.print(power.amps(), 2),
                        "output = " + TradeUnit.VOLT.print(supply.regulator().outputVolts(), 2),
                        "feed = " + TradeUnit.MILLIOHM.print(supply.feed().ohms(), 1)),
                TradeUnit.VOLT.print(power.receiverVolts(), 2) + " at the receiver, "
                        + TradeUnit.VOLT.print(power.lowestServoVolts(), 2) + " at " + power.lowestServo(),
                LAWS);
    }
}
