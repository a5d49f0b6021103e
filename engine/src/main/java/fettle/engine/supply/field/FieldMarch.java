package fettle.engine.supply.field;

import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.List;

/** Follows a field battery through its uses in short steps. */
final class FieldMarch {
    private static final int STEPS = 400;

    private FieldMarch() {}

    static List<FieldLine> lines(FieldBattery battery, List<FieldUse> uses) {
        List<FieldLine> lines = new ArrayList<>();
        double charge = battery.charge().value();
        for (FieldUse use : uses) {
            FieldLine line = line(battery, use, charge);
            lines.add(line);
            charge = line.chargeAfter();
        }
        return lines;
    }

    private static FieldLine line(FieldBattery battery, FieldUse use, double start) {
        double step = use.seconds() / STEPS;
        double charge = start;
        double seconds = 0;
        double coulombs = 0;
        double lowest = battery.restVolts(start);
        boolean whole = true;
        for (int i = 0; i < STEPS && whole; i++) {
            double amps = amps(battery, use, charge);
            double used = step * battery.usedPerSecond(amps) / battery.ratedCoulombs();
            double share = Math.min(1, Math.max(0, charge - battery.reserve()) / used);
            whole = share >= 1;
            charge -= share * used;
            seconds += share * step;
            coulombs += share * step * amps;
            lowest = share > 0 ? Math.min(lowest, use.batteryWatts() / amps) : lowest;
        }
        double joules = use.batteryWatts() * seconds;
        return new FieldLine(
                use.name(),
                seconds,
                whole,
                joules,
                joules * (1 - use.efficiency()),
                seconds > 0 ? coulombs / seconds : 0,
                lowest,
                charge);
    }

    /** I = 2P / (V + √(V² − 4RP)): the smaller root of V·I − R·I² = P. */
    private static double amps(FieldBattery battery, FieldUse use, double charge) {
        double volts = battery.restVolts(charge);
        double root = volts * volts - 4 * battery.ohms() * use.batteryWatts();
        if (root < 0) {
            throw new InputException(
                    "uses",
                    use.name() + " asks for " + TradeUnit.WATT.print(use.batteryWatts(), 0)
                            + " of the battery, which can give at most "
                            + TradeUnit.WATT.print(volts * volts / (4 * battery.ohms()), 0)
                            + ". Charge at less power, or fewer packs at once.");
        }
        return 2 * use.batteryWatts() / (volts + Math.sqrt(root));
    }
}
