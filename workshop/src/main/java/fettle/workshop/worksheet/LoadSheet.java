package fettle.workshop.worksheet;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.model.PackModel;
import fettle.engine.pack.power.LoadAnswer;
import fettle.engine.units.TradeUnit;
import fettle.workshop.worksheet.Sheet.Figure;
import java.util.List;

/** What a load does to a pack. */
final class LoadSheet {
    static final Worksheet WORKSHEET = new Worksheet(
            "load",
            "Put a load on a pack",
            "How far does it sag, how long does it last, how warm does it get, and what stops it?",
            PackFields.with(WorksheetField.line(
                    "load",
                    "Load",
                    "A current, a power, or a profile that repeats: 30 A, or 400 W, or 60 A 20 s; 20 A 3 min.",
                    "")),
            LoadSheet::answer);

    private LoadSheet() {}

    private static Sheet answer(Typed typed) {
        Chemistry chemistry = PackFields.chemistry(typed);
        LoadText.Load load = typed.read("load", () -> LoadText.parse(typed.word("load")), LoadText.parse("1 A"));
        PackModel pack = PackFields.pack(typed);
        return typed.make(() -> sheet(load.on(pack, PackFields.limits(chemistry))));
    }

    private static Sheet sheet(LoadAnswer answer) {
        return new Sheet(
                "Lasts " + TradeUnit.MINUTE.print(answer.runTime(), 1) + "; ended by " + answer.binding() + ".",
                List.of(
                        Figure.of("run_time", "Time", answer.runTime(), TradeUnit.MINUTE, 1),
                        Figure.of("drawn", "Charge drawn", answer.drawn(), TradeUnit.MILLIAMPERE_HOUR, 0),
                        Figure.of("energy", "Energy drawn", answer.energy(), TradeUnit.WATT_HOUR, 1),
                        Figure.of("first_sag", "Sag when it comes on", answer.firstSag(), TradeUnit.VOLT, 2),
                        Figure.of("lowest_cell", "Weakest cell, lowest", answer.lowestCell(), TradeUnit.VOLT, 2),
                        Figure.of("hottest", "Warmest cell", answer.hottest(), TradeUnit.CELSIUS, 0),
                        Figure.of("left", "Charge left at rest", answer.left(), TradeUnit.PERCENT, 1)),
                List.of(),
                Cautions.LOADING,
                answer.working());
    }
}
