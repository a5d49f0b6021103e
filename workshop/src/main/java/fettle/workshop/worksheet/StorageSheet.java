package fettle.workshop.worksheet;

import fettle.engine.cell.Chemistry;
import fettle.engine.charge.answer.StorageAnswer;
import fettle.engine.pack.model.PackModel;
import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import fettle.workshop.worksheet.Sheet.Figure;
import java.util.List;

/** What brings a pack to its storage band. */
final class StorageSheet {
    static final Worksheet WORKSHEET = new Worksheet(
            "storage",
            "Bring a pack to storage",
            "Charge or discharge, how much, how long on this port, and is every cell then in the band?",
            PackFields.with(
                    WorksheetField.line("amps", "Largest current", "Charging or discharging, in A.", ""),
                    WorksheetField.line("discharge", "Discharge power", "Of the port, in W.", "10000 W"),
                    WorksheetField.line("watts", "Charge power", "Of the port, in W.", "10000 W")),
            StorageSheet::answer);

    private StorageSheet() {}

    private static Sheet answer(Typed typed) {
        Chemistry chemistry = PackFields.chemistry(typed);
        double amps = typed.quantity("amps", Measure.CURRENT, TradeUnit.AMPERE, 1);
        double discharge = typed.quantity("discharge", Measure.POWER, TradeUnit.WATT, 100);
        double watts = typed.quantity("watts", Measure.POWER, TradeUnit.WATT, 100);
        StorageAnswer.Means means = typed.read(
                "amps", () -> new StorageAnswer.Means(amps, discharge, watts), new StorageAnswer.Means(1, 100, 100));
        PackModel pack = PackFields.pack(typed);
        return typed.make(() -> sheet(StorageAnswer.of(pack, PackFields.limits(chemistry), means)));
    }

    private static Sheet sheet(StorageAnswer answer) {
        double drawn = answer.drawn().value();
        String note = answer.inBand()
                ? "Every cell is then in the band."
                : "Not every cell is then in the band: one current cannot even them out. Balance the pack.";
        if (drawn == 0) {
            return new Sheet("Nothing to charge or discharge.", List.of(), List.of(note), "", answer.working());
        }
        String doing = drawn > 0 ? "Discharge " : "Charge ";
        return new Sheet(
                doing + TradeUnit.MILLIAMPERE_HOUR.print(answer.drawn().times(Math.signum(drawn)), 0) + " at "
                        + TradeUnit.AMPERE.print(answer.amps(), 2) + ", about "
                        + TradeUnit.MINUTE.print(answer.duration(), 0) + "; set by " + answer.binding() + ".",
                List.of(
                        Figure.of("drawn", "Charge to draw", answer.drawn(), TradeUnit.MILLIAMPERE_HOUR, 0),
                        Figure.of("duration", "Time", answer.duration(), TradeUnit.MINUTE, 0),
                        Figure.of("heat", "Heat in the pack", answer.heat(), TradeUnit.WATT_HOUR, 2)),
                List.of(note),
                Cautions.STORING,
                answer.working());
    }
}
