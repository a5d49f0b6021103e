package fettle.workshop.worksheet;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.model.PackModel;
import fettle.engine.pack.power.SustainableCurrent;
import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import fettle.workshop.worksheet.Sheet.Figure;
import java.util.List;
import java.util.Locale;

/** The current a pack carries from full to reserve, beside its label. */
final class RatingSheet {
    static final Worksheet WORKSHEET = new Worksheet(
            "rating",
            "An honest rating",
            "What constant current does it carry from full to reserve, beside what its label says?",
            PackFields.fullWith(
                    WorksheetField.line("label", "Label's current", "Continuous, in A, if it states one.", "")),
            RatingSheet::answer);

    private RatingSheet() {}

    private static Sheet answer(Typed typed) {
        Chemistry chemistry = PackFields.chemistry(typed);
        double label =
                typed.optional("label", Measure.CURRENT, TradeUnit.AMPERE).orElse(Double.NaN);
        PackModel pack = PackFields.fullPack(typed);
        return typed.make(() -> sheet(SustainableCurrent.of(pack, PackFields.limits(chemistry), label)));
    }

    private static Sheet sheet(SustainableCurrent answer) {
        List<String> notes = Double.isNaN(answer.labelAmps())
                ? List.of()
                : List.of("The label says " + TradeUnit.AMPERE.print(answer.labelAmps(), 0) + ", "
                        + String.format(
                                Locale.ROOT,
                                "%.1f times as much.",
                                answer.labelAmps() / answer.amps().value()));
        return new Sheet(
                "Carries " + TradeUnit.AMPERE.print(answer.amps(), 0) + " (" + TradeUnit.C_RATE.print(answer.cRate(), 1)
                        + ") from full to reserve; more breaks " + answer.binding() + ".",
                List.of(
                        Figure.of("amps", "Sustainable current", answer.amps(), TradeUnit.AMPERE, 1),
                        Figure.of("c_rate", "Over the capacity", answer.cRate(), TradeUnit.C_RATE, 1)),
                notes,
                Cautions.LOADING,
                answer.working());
    }
}
