package fettle.workshop.worksheet;

import fettle.engine.cell.Chemistry;
import fettle.engine.charge.answer.BalanceAnswer;
import fettle.engine.charge.answer.ChargeMeans;
import fettle.engine.pack.model.PackModel;
import fettle.engine.pack.simulation.Balancer;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import fettle.workshop.worksheet.Sheet.Figure;
import java.util.List;
import java.util.stream.IntStream;

/** How long balancing takes, before a charge and during it. */
final class BalanceSheet {
    static final Worksheet WORKSHEET = new Worksheet(
            "balance",
            "Balance a pack",
            "How much must be bled from which cell, and is it quicker before the charge or during it?",
            PackFields.with(
                    ChargeFields.AMPS,
                    WorksheetField.line("bleed", "Bleed current", "Of the balancer, in A.", "0.5 A"),
                    ChargeFields.WATTS,
                    ChargeFields.SOURCE),
            BalanceSheet::answer);

    private BalanceSheet() {}

    private static Sheet answer(Typed typed) {
        Chemistry chemistry = PackFields.chemistry(typed);
        ChargeMeans means = ChargeFields.means(typed);
        Balancer balancer = ChargeFields.balancer(typed).orElse(new Balancer(1, 1, 0));
        PackModel pack = PackFields.pack(typed);
        return typed.make(() -> sheet(BalanceAnswer.of(pack, PackFields.limits(chemistry), means, balancer)));
    }

    private static Sheet sheet(BalanceAnswer answer) {
        Estimate first = answer.before();
        double whole = first.value() + answer.chargeAfter().value();
        boolean during = answer.during().value() < whole;
        List<String> bleeds = IntStream.range(0, answer.bleedCoulombs().size())
                .filter(cell -> answer.bleedCoulombs().get(cell) > 0)
                .mapToObj(cell -> "Bleed "
                        + TradeUnit.MILLIAMPERE_HOUR.print(
                                answer.bleedCoulombs().get(cell), 0) + " from cell " + (cell + 1) + ".")
                .toList();
        return new Sheet(
                during
                        ? "Balance while charging: " + TradeUnit.MINUTE.print(answer.during(), 0) + " against "
                                + TradeUnit.MINUTE.print(whole, 0) + " one after the other."
                        : "Balance first: " + TradeUnit.MINUTE.print(first, 0) + ", then charge.",
                List.of(
                        Figure.of("before", "Balancing at rest", first, TradeUnit.MINUTE, 0),
                        Figure.of("charge_after", "The charge after it", answer.chargeAfter(), TradeUnit.MINUTE, 0),
                        Figure.of("during", "Charging with balancing", answer.during(), TradeUnit.MINUTE, 0),
                        Figure.of(
                                "spread_during",
                                "Cells then still apart",
                                answer.spreadDuring(),
                                TradeUnit.MILLIVOLT,
                                0)),
                bleeds,
                Cautions.CHARGING,
                answer.working());
    }
}
