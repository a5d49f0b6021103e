package fettle.workshop.worksheet;

import fettle.engine.cell.Chemistry;
import fettle.engine.charge.answer.ChargeMeans;
import fettle.engine.charge.answer.JoinAnswer;
import fettle.engine.charge.answer.JoinAnswer.Joined;
import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import fettle.workshop.CellsText;
import fettle.workshop.worksheet.Sheet.Figure;
import java.util.ArrayList;
import java.util.List;

/** Whether packs may be joined side by side for charging. */
final class JoinSheet {
    static final Worksheet WORKSHEET = new Worksheet(
            "join",
            "Charge packs side by side",
            "May these packs be joined, what flows when they are, and who takes how much of the charge?",
            List.of(
                    PackFields.CHEMISTRY,
                    PackFields.CELLS,
                    WorksheetField.lines(
                            "packs",
                            "Packs",
                            "One a line: name; charge or rest volts; capacity; mΩ per cell; largest charge current. E.g."
                                    + " P01; 3.84; 5000 mAh; 3 mΩ; 5 A"),
                    WorksheetField.line("leads", "Leads of each", "With connector, in mΩ.", "10 mΩ"),
                    ChargeFields.AMPS,
                    ChargeFields.WATTS,
                    ChargeFields.SOURCE),
            JoinSheet::answer);

    private JoinSheet() {}

    private static Sheet answer(Typed typed) {
        Chemistry chemistry = PackFields.chemistry(typed);
        CellsText cells = typed.read("cells", () -> CellsText.parse(typed.word("cells")), new CellsText(1, 1));
        double leads = typed.quantity("leads", Measure.RESISTANCE, TradeUnit.MILLIOHM, 0);
        ChargeMeans means = ChargeFields.means(typed);
        List<Joined> packs = typed.read(
                "packs", () -> JoinedText.packs(typed.word("packs"), chemistry, cells, leads), List.<Joined>of());
        return typed.make(() -> sheet(JoinAnswer.of(packs, PackFields.limits(chemistry), means)));
    }

    private static Sheet sheet(JoinAnswer answer) {
        List<Figure> figures = new ArrayList<>();
        for (JoinAnswer.Share pack : answer.packs()) {
            figures.add(Figure.of(
                    pack.name() + "_first_amps",
                    pack.name() + " on joining (at most " + TradeUnit.AMPERE.print(pack.allowedAmps(), 1) + ")",
                    pack.first(),
                    TradeUnit.AMPERE,
                    2));
            if (answer.mayJoin()) {
                figures.add(Figure.exact(
                        pack.name() + "_share",
                        pack.name() + " of the charge current",
                        pack.chargeShare(),
                        TradeUnit.PERCENT,
                        0));
            }
        }
        figures.add(Figure.of("even_after", "Even after", answer.settling(), TradeUnit.MINUTE, 1));
        figures.add(Figure.of("lead_heat", "Heat in leads", answer.leadHeat(), TradeUnit.WATT_HOUR, 3));
        String verdict = answer.first()
                .map(first -> "Do not join them: bring " + first.name() + " from "
                        + TradeUnit.VOLT.print(first.volts(), 2) + " to "
                        + TradeUnit.VOLT.print(first.towardsVolts(), 2)
                        + " first.")
                .orElseGet(() ->
                        "They may be joined: no current passes what its pack may take, what is not known included. The charge then takes "
                                + TradeUnit.MINUTE.print(answer.sharedCharge().orElseThrow(), 0) + ".");
        return new Sheet(verdict, figures, List.of(), Cautions.JOINING, answer.working());
    }
}
