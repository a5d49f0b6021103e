package fettle.engine.supply.field;

import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;

/**
 * Something the battery feeds.
 *
 * @param name what it is
 * @param watts power it takes where it is used [W], &gt; 0
 * @param seconds how long [s], &gt; 0
 * @param efficiency share of the battery's power that arrives, through inverter and charger, 0.3 … 1
 */
public record FieldUse(String name, double watts, double seconds, double efficiency) {
    public FieldUse {
        Faults faults = new Faults();
        faults.range("uses", name + ": power", watts, TradeUnit.WATT, 0.01, 20_000, "Give it in W.");
        faults.range("uses", name + ": time", seconds, TradeUnit.MINUTE, 0.01, 10_000, "Give it in minutes or hours.");
        faults.range("uses", name + ": efficiency", efficiency, TradeUnit.PERCENT, 30, 100, "Usual is 80 to 95 %.");
        faults.refuse();
    }

    /** A charge of a pack: energy it takes up [J], in a time [s], through a charger and, if there is one, an inverter. */
    public static FieldUse charge(
            String name, double joules, double seconds, double chargerEfficiency, double inverterEfficiency) {
        return new FieldUse(name, joules / seconds, seconds, chargerEfficiency * inverterEfficiency);
    }

    /** Power the battery gives [W]. */
    double batteryWatts() {
        return watts / efficiency;
    }

    FieldUse withEfficiency(double factor) {
        return new FieldUse(name, watts, seconds, Math.max(0.3, efficiency * factor));
    }
}
