package fettle.workshop.worksheet;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.model.PackModel;
import fettle.engine.pack.power.ColdPack;
import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import fettle.workshop.worksheet.Sheet.Figure;
import java.util.List;

/** What a cold pack gives against a warm one. */
final class ColdSheet {
    private static final double FREEZING = 273.15;

    static final Worksheet WORKSHEET = new Worksheet(
            "cold",
            "A cold pack",
            "What does it give in the cold against 25 °C, and how warm should it be first?",
            PackFields.with(
                    WorksheetField.line("load", "Load", "A current, e.g. 30 A.", ""),
                    WorksheetField.line("cold", "The cold", "Of pack and air, in °C.", "0 °C")),
            ColdSheet::answer);

    private ColdSheet() {}

    private static Sheet answer(Typed typed) {
        Chemistry chemistry = PackFields.chemistry(typed);
        double amps = typed.quantity("load", Measure.CURRENT, TradeUnit.AMPERE, 1);
        double cold = typed.quantity("cold", Measure.TEMPERATURE, TradeUnit.CELSIUS, FREEZING);
        PackModel pack = PackFields.pack(typed);
        return typed.make(() -> sheet(ColdPack.of(pack, PackFields.limits(chemistry), amps, cold), cold));
    }

    private static Sheet sheet(ColdPack answer, double coldKelvins) {
        String warmUp = answer.warmUpKelvins().isEmpty()
                ? "In that air it never gives nine tenths of what it gives warm."
                : answer.warmUpKelvins().getAsDouble() <= coldKelvins
                        ? "It needs no warming for this load."
                        : "Warm the pack to "
                                + TradeUnit.CELSIUS.print(answer.warmUpKelvins().getAsDouble(), 0)
                                + " first: from there it gives nine tenths of what it gives warm.";
        return new Sheet(
                "Gives " + TradeUnit.MILLIAMPERE_HOUR.print(answer.cold(), 0) + " cold against "
                        + TradeUnit.MILLIAMPERE_HOUR.print(answer.warm(), 0) + " warm.",
                List.of(
                        Figure.of("cold", "Cold", answer.cold(), TradeUnit.MILLIAMPERE_HOUR, 0),
                        Figure.of("warm", "At 25 °C", answer.warm(), TradeUnit.MILLIAMPERE_HOUR, 0),
                        Figure.of("cold_sag", "Sag when it comes on, cold", answer.coldSag(), TradeUnit.VOLT, 2),
                        Figure.of("warm_sag", "Sag when it comes on, warm", answer.warmSag(), TradeUnit.VOLT, 2)),
                List.of(warmUp),
                Cautions.LOADING,
                answer.working());
    }
}
