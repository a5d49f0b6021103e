package fettle.engine.supply.receiver;

import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.List;

/** What a supply cannot bear. */
final class PowerWarnings {
    /** Margin above reset that covers starts and ageing [V]; Fettle's choice. */
    private static final double WANTED_MARGIN = 0.5;

    /** Heat a small BEC without air stream gets rid of [W]; from memory. */
    private static final double WARM_WATTS = 3;

    private static final double DEVIATIONS = 2;

    private PowerWarnings() {}

    static List<PowerWarning> of(ReceiverSupply supply, List<ScenarioPower> scenarios) {
        List<PowerWarning> warnings = new ArrayList<>();
        for (ScenarioPower power : scenarios) {
            limits(supply.regulator(), power, warnings);
            reset(power, warnings);
        }
        for (ServoDraw servo : supply.servos()) {
            if (servo.basis() == Basis.ASSUMED) {
                warnings.add(new PowerWarning(
                        "assumed-current",
                        "currents of " + servo.name() + " are assumed",
                        "Sweep it on the bench; the budget is no better than its currents."));
            }
        }
        return warnings;
    }

    private static void limits(Regulator regulator, ScenarioPower power, List<PowerWarning> warnings) {
        String at = " in " + power.scenario().label();
        if (power.amps() > regulator.peakAmps()) {
            warnings.add(new PowerWarning(
                    "over-peak",
                    "the servos take " + amps(power.amps()) + at + "; the supply's peak is "
                            + amps(regulator.peakAmps()) + ", and its voltage may collapse",
                    "Use a stronger supply, or find out why a servo would stall."));
        } else if (power.scenario() != Scenario.ALL_STALLED && power.amps() > regulator.continuousAmps()) {
            warnings.add(new PowerWarning(
                    "over-continuous",
                    "the servos take " + amps(power.amps()) + at + "; the supply gives "
                            + amps(regulator.continuousAmps()) + " for longer than seconds",
                    "Use a stronger supply if this lasts."));
        }
        if (regulator.kind() == Regulator.Kind.LINEAR
                && power.scenario() == Scenario.CRUISE
                && power.heatWatts() > WARM_WATTS) {
            warnings.add(new PowerWarning(
                    "linear-heat",
                    "the linear BEC turns " + TradeUnit.WATT.print(power.heatWatts(), 1) + " into heat" + at
                            + "; about " + TradeUnit.WATT.print(WARM_WATTS, 0)
                            + " is what a small one sheds (from memory)",
                    "Use a switching BEC or a receiver pack at this battery voltage."));
        }
    }

    private static void reset(ScenarioPower power, List<PowerWarning> warnings) {
        double surely = power.resetMarginVolts().value()
                - DEVIATIONS * power.resetMarginVolts().standardDeviation();
        if (surely < WANTED_MARGIN) {
            warnings.add(new PowerWarning(
                    surely < 0 ? "resets" : "thin-reset-margin",
                    "the receiver is " + TradeUnit.VOLT.print(power.resetMarginVolts(), 2) + " above its reset in "
                            + power.scenario().label() + "; keep " + TradeUnit.VOLT.print(WANTED_MARGIN, 1),
                    "See the changes below, the most helpful first."));
        }
    }

    private static String amps(double amps) {
        return TradeUnit.AMPERE.print(amps, 2);
    }
}
