package fettle.engine.pack;

import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One set of rest readings of a pack.
 *
 * @param takenAt when it was read
 * @param cellRestVolts rest volts per cell in balance-lead order; empty if only the pack was read
 * @param packRestVolts rest volts of the whole pack; {@code null} if not read
 * @param restSeconds time since the last load or charge [s]; {@code null} if not stated
 * @param temperatureKelvins pack temperature [K]; {@code null} if not stated
 * @param cellResistanceOhms resistance per cell [Ω]; empty if not read
 * @param resistanceMethod how resistance was measured, in the keeper's words; may be empty
 * @param signs what was seen or smelt
 * @param note free text
 */
public record Check(
        Instant takenAt,
        List<Double> cellRestVolts,
        @Nullable Double packRestVolts,
        @Nullable Double restSeconds,
        @Nullable Double temperatureKelvins,
        List<Double> cellResistanceOhms,
        String resistanceMethod,
        Set<Sign> signs,
        String note) {

    /** Signs that ground a pack until it is inspected. */
    public enum Sign {
        SWELLING("swollen"),
        DAMAGE("damaged"),
        SMELL("smells");

        private final String label;

        Sign(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    public Check {
        cellRestVolts = List.copyOf(cellRestVolts);
        cellResistanceOhms = List.copyOf(cellResistanceOhms);
        signs = Set.copyOf(signs);
        Faults faults = new Faults();
        for (int cell = 0; cell < cellRestVolts.size(); cell++) {
            faults.range(
                    "cellRestVolts." + (cell + 1),
                    "cell " + (cell + 1),
                    cellRestVolts.get(cell),
                    TradeUnit.VOLT,
                    0,
                    5,
                    "Check the decimal point, the unit and the meter's range.");
        }
        for (int cell = 0; cell < cellResistanceOhms.size(); cell++) {
            faults.range(
                    "cellResistanceOhms." + (cell + 1),
                    "resistance of cell " + (cell + 1),
                    cellResistanceOhms.get(cell),
                    TradeUnit.MILLIOHM,
                    0.01,
                    5_000,
                    "Check the decimal point.");
        }
        faults.range("packRestVolts", "pack volts", packRestVolts, TradeUnit.VOLT, 0, 120, "Check the decimal point.");
        faults.range(
                "restSeconds", "rest", restSeconds, TradeUnit.HOUR, 0, 20_000, "State the time since the last load.");
        faults.range(
                "temperature", "temperature", temperatureKelvins, TradeUnit.CELSIUS, -40, 120, "Write 21C or 70F.");
        if (cellRestVolts.isEmpty() && packRestVolts == null && signs.isEmpty()) {
            faults.add(
                    "cellRestVolts",
                    "the check has neither volts nor anything seen. Give one voltage per cell, the pack's volts, or what "
                            + "was seen, e.g. swollen.");
        }
        faults.refuse();
    }
}
