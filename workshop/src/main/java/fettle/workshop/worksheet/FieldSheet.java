package fettle.workshop.worksheet;

import fettle.engine.cell.Chemistry;
import fettle.engine.supply.field.FieldBattery;
import fettle.engine.supply.field.FieldLedger;
import fettle.engine.supply.field.FieldLine;
import fettle.engine.supply.field.FieldUse;
import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.engine.units.TradeUnit;
import fettle.workshop.CellsText;
import fettle.workshop.TypedLines;
import fettle.workshop.worksheet.Sheet.Figure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What a battery in the field can feed. */
final class FieldSheet {
    private static final int PARTS = 3;

    /** A charge typed as a share; from memory. */
    private static final double CHARGE_DEVIATION = 0.05;

    static final Worksheet WORKSHEET = new Worksheet(
            "field",
            "Feed chargers from a field battery",
            "Is its energy enough for the day, what is lost on the way, and where must it stop?",
            List.of(
                    WorksheetField.choice(
                            "chemistry",
                            "Chemistry",
                            "Of the field or vehicle battery.",
                            "lead-acid",
                            Arrays.stream(Chemistry.values())
                                    .map(Chemistry::label)
                                    .toList()),
                    WorksheetField.line("cells", "Cells", "In series; 12 V lead-acid has 6, 12 V LiFePO4 has 4.", "6S"),
                    WorksheetField.line("capacity", "Capacity", "On its label, e.g. 80 Ah.", ""),
                    WorksheetField.lines(
                            "uses",
                            "What it feeds",
                            "One a line, in order: name; energy put into a pack, or power of a load; time. E.g."
                                    + " charge P07; 60 Wh; 45 min, or soldering iron; 40 W; 20 min"),
                    WorksheetField.line(
                            "charge", "Charge now", "A share, or rest volts of the whole battery.", "100 %"),
                    WorksheetField.line("reserve", "Reserve", "Kept back.", "50 %"),
                    WorksheetField.line("charger", "Charger's efficiency", "From its input to the pack.", "85 %"),
                    WorksheetField.line("inverter", "Inverter's efficiency", "100 % where there is none.", "100 %"),
                    WorksheetField.line(
                            "hours", "Capacity is stated for", "The time of discharge on its label.", "20 h"),
                    WorksheetField.line(
                            "exponent",
                            "Peukert's exponent",
                            "Left out: 1.25 for lead-acid, 1.05 for NiMH, 1 for lithium.",
                            ""),
                    WorksheetField.line("resistance", "Inner resistance", "With its leads.", "10 mΩ")),
            FieldSheet::answer);

    private FieldSheet() {}

    private static Sheet answer(Typed typed) {
        Chemistry chemistry = PackFields.chemistry(typed);
        CellsText cells = typed.read("cells", () -> CellsText.parse(typed.word("cells")), new CellsText(6, 1));
        double coulombs = typed.quantity("capacity", Measure.CHARGE, TradeUnit.AMPERE_HOUR, 3600);
        Estimate charge = typed.read(
                "charge",
                () -> charge(typed.word("charge"), chemistry, cells.inSeries()),
                new Estimate(1, 0, List.of()));
        double reserve = typed.quantity("reserve", Measure.FRACTION, TradeUnit.PERCENT, 0.5);
        double charger = typed.quantity("charger", Measure.FRACTION, TradeUnit.PERCENT, 1);
        double inverter = typed.quantity("inverter", Measure.FRACTION, TradeUnit.PERCENT, 1);
        double hours = typed.quantity("hours", Measure.DURATION, TradeUnit.HOUR, 72_000);
        double exponent = typed.read("exponent", () -> exponent(typed.word("exponent"), chemistry), 1.0);
        double ohms = typed.quantity("resistance", Measure.RESISTANCE, TradeUnit.MILLIOHM, 0);
        List<FieldUse> uses = typed.read(
                "uses",
                () -> TypedLines.read("uses", typed.word("uses"), line -> use(line, charger, inverter)),
                List.of(new FieldUse("any", 1, 60, 1)));
        return typed.make(() -> sheet(FieldLedger.of(
                new FieldBattery(chemistry, cells.inSeries(), coulombs, hours, exponent, ohms, charge, reserve),
                uses)));
    }

    private static Estimate charge(String typed, Chemistry chemistry, int cells) {
        if (QuantityText.measures(typed, Measure.VOLTAGE)) {
            double volts = QuantityText.si("charge", "rest volts", typed, Measure.VOLTAGE, null);
            return FieldBattery.chargeAtRest(chemistry, cells, volts);
        }
        double share = QuantityText.si("charge", "charge", typed, Measure.FRACTION, TradeUnit.PERCENT);
        return Estimate.ofIndependent(share, List.of(new Driver("charge as typed", CHARGE_DEVIATION)));
    }

    private static double exponent(String typed, Chemistry chemistry) {
        if (typed.isEmpty()) {
            return FieldBattery.usualExponent(chemistry);
        }
        if (!typed.matches("\\d([.,]\\d{1,3})?")) {
            throw new InputException("exponent", "Peukert's exponent is \"" + typed + "\"; expected 1 to 1.6.");
        }
        return Double.parseDouble(typed.replace(',', '.'));
    }

    private static FieldUse use(String line, double charger, double inverter) {
        String[] parts = line.strip().split("\\s*;\\s*");
        if (parts.length != PARTS) {
            throw new InputException(
                    "uses", parts.length + " parts; expected 3 with semicolons between: name; energy or power; time.");
        }
        double seconds = QuantityText.si("uses", "time", parts[2], Measure.DURATION, TradeUnit.MINUTE);
        if (QuantityText.measures(parts[1], Measure.ENERGY)) {
            double joules = QuantityText.si("uses", "energy", parts[1], Measure.ENERGY, null);
            return FieldUse.charge(parts[0], joules, seconds, charger, inverter);
        }
        return new FieldUse(
                parts[0], QuantityText.si("uses", "power", parts[1], Measure.POWER, TradeUnit.WATT), seconds, inverter);
    }

    private static Sheet sheet(FieldLedger ledger) {
        List<String> notes = new ArrayList<>();
        for (FieldLine line : ledger.lines()) {
            notes.add(note(line));
        }
        String stop = TradeUnit.VOLT.print(ledger.reserveVolts(), 2);
        String verdict = ledger.enough()
                ? "Enough: " + TradeUnit.PERCENT.print(ledger.chargeLeft(), 0) + " left after everything."
                : "Not enough: at its reserve, " + stop + " at rest, before everything is fed.";
        return new Sheet(
                verdict,
                List.of(
                        Figure.of("left", "Charge left", ledger.chargeLeft(), TradeUnit.PERCENT, 0),
                        Figure.of("given", "Energy given", ledger.givenJoules(), TradeUnit.WATT_HOUR, 0),
                        Figure.exact("lost", "Lost on the way", ledger.lostJoules(), TradeUnit.WATT_HOUR, 0),
                        Figure.exact(
                                "reserve_volts",
                                "Stop at, rested for hours",
                                ledger.reserveVolts(),
                                TradeUnit.VOLT,
                                2)),
                notes,
                Cautions.FIELD,
                ledger.working());
    }

    private static String note(FieldLine line) {
        if (line.seconds() <= 0) {
            return line.name() + ": not fed; the reserve was reached before.";
        }
        return line.name() + ": " + TradeUnit.AMPERE.print(line.meanAmps(), 1) + " for "
                + TradeUnit.MINUTE.print(line.seconds(), 0) + (line.whole() ? "" : ", then the reserve is reached")
                + "; " + TradeUnit.WATT_HOUR.print(line.batteryJoules(), 0) + ", of which "
                + TradeUnit.WATT_HOUR.print(line.lostJoules(), 0) + " are lost; not below "
                + TradeUnit.VOLT.print(line.lowestVolts(), 1) + "; "
                + TradeUnit.PERCENT.print(line.chargeAfter(), 0) + " left.";
    }
}
