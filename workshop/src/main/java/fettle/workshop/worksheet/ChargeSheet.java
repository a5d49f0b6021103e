package fettle.workshop.worksheet;

import fettle.engine.cell.Chemistry;
import fettle.engine.charge.answer.ChargeAnswer;
import fettle.engine.charge.answer.ChargeMeans;
import fettle.engine.pack.model.PackModel;
import fettle.engine.pack.simulation.Balancer;
import fettle.engine.units.TradeUnit;
import fettle.workshop.worksheet.Sheet.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How long a charge takes, what it costs, what binds. */
final class ChargeSheet {
    static final Worksheet WORKSHEET = new Worksheet(
            "charge",
            "Charge a pack",
            "How long, how warm, what from the source, and what would half the current cost and save?",
            PackFields.with(ChargeFields.AMPS, ChargeFields.WATTS, ChargeFields.SOURCE, ChargeFields.BLEED),
            ChargeSheet::answer);

    private ChargeSheet() {}

    private static Sheet answer(Typed typed) {
        Chemistry chemistry = PackFields.chemistry(typed);
        ChargeMeans means = ChargeFields.means(typed);
        Optional<Balancer> balancer = ChargeFields.balancer(typed);
        PackModel pack = PackFields.pack(typed);
        return typed.make(() -> sheet(ChargeAnswer.of(pack, PackFields.limits(chemistry), means.with(balancer))));
    }

    private static Sheet sheet(ChargeAnswer answer) {
        List<String> notes = new ArrayList<>();
        answer.phases()
                .forEach(
                        phase -> notes.add(phase.limit() + " holds for " + TradeUnit.MINUTE.print(phase.seconds(), 1)));
        notes.add("At " + TradeUnit.AMPERE.print(answer.slower().amps(), 2) + " it takes "
                + TradeUnit.MINUTE.print(answer.slower().moreSeconds(), 0) + " more, makes "
                + TradeUnit.WATT_HOUR.print(answer.slower().lessHeatJoules(), 2) + " less heat and stays "
                + String.format(Locale.ROOT, "%.1f K", answer.slower().coolerKelvins()) + " cooler.");
        return new Sheet(
                "Full in " + TradeUnit.MINUTE.print(answer.duration(), 0) + ", held at "
                        + TradeUnit.VOLT.print(answer.packVolts(), 2) + " so that no cell passes its limit.",
                List.of(
                        Figure.of("duration", "Time", answer.duration(), TradeUnit.MINUTE, 0),
                        Figure.of("returned", "Charge put in", answer.returned(), TradeUnit.MILLIAMPERE_HOUR, 0),
                        Figure.of("source_energy", "From the source", answer.sourceEnergy(), TradeUnit.WATT_HOUR, 1),
                        Figure.of("heat", "Heat in the pack", answer.heat(), TradeUnit.WATT_HOUR, 2),
                        Figure.of("hottest", "Warmest cell", answer.hottest(), TradeUnit.CELSIUS, 1),
                        Figure.of("spread", "Cells apart at the end", answer.spread(), TradeUnit.MILLIVOLT, 0)),
                notes,
                Cautions.CHARGING,
                answer.working());
    }
}
