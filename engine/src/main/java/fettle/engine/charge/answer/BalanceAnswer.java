package fettle.engine.charge.answer;

import fettle.engine.pack.model.CellModel;
import fettle.engine.pack.model.PackModel;
import fettle.engine.pack.model.Spreading;
import fettle.engine.pack.simulation.Balancer;
import fettle.engine.rule.Limits;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What balancing a pack comes to, before a charge or during it.
 *
 * <p>Cells are even when, full, they would be full together: what must be bled from a cell is how much less room it has
 * left than the cell with most room.
 *
 * @param bleedCoulombs charge to draw from each cell [C]
 * @param before time to balance at rest [s]
 * @param chargeAfter time of the charge that follows [s]
 * @param during time of a charge that balances as it goes [s]
 * @param spreadDuring volts between cells when that charge ends [V]
 * @param working the steps
 */
public record BalanceAnswer(
        List<Double> bleedCoulombs,
        Estimate before,
        Estimate chargeAfter,
        Estimate during,
        Estimate spreadDuring,
        Working working) {

    public BalanceAnswer {
        bleedCoulombs = List.copyOf(bleedCoulombs);
    }

    /**
     * Works out both ways.
     *
     * @param pack the pack as it is known
     * @param limits the rules that hold for it
     * @param means what charges it
     * @param balancer bleeds its cells
     */
    public static BalanceAnswer of(PackModel pack, Limits limits, ChargeMeans means, Balancer balancer) {
        List<Double> bleed = bleed(pack);
        double amps = balancer.bleedAmps() * balancer.duty();
        Estimate before = Spreading.of(pack, variant -> new double[] {most(bleed(variant)) / amps})
                .get(0);
        ChargeAnswer after = ChargeAnswer.of(even(pack, bleed), limits, means.with(Optional.empty()));
        ChargeAnswer during = ChargeAnswer.of(pack, limits, means.with(Optional.of(balancer)));
        Step step = new Step(
                "balancing at rest",
                "largest charge to bleed ÷ (bleed current × duty)",
                List.of(
                        "largest charge to bleed = " + TradeUnit.MILLIAMPERE_HOUR.print(most(bleed), 0),
                        "bleed current = " + TradeUnit.AMPERE.print(balancer.bleedAmps(), 2),
                        "duty = " + TradeUnit.PERCENT.print(balancer.duty(), 0)),
                TradeUnit.MINUTE.print(before, 0),
                Citation.commonPractice("cells are balanced so that all are full together"));
        return new BalanceAnswer(bleed, before, after.duration(), during.duration(), during.spread(), Working.of(step));
    }

    private static List<Double> bleed(PackModel pack) {
        double room =
                pack.cells().stream().mapToDouble(BalanceAnswer::room).max().orElseThrow();
        return pack.cells().stream().map(cell -> room - room(cell)).toList();
    }

    private static double room(CellModel cell) {
        return (1 - cell.chargeFraction()) * cell.capacityCoulombs();
    }

    private static double most(List<Double> coulombs) {
        return coulombs.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    }

    private static PackModel even(PackModel pack, List<Double> bleed) {
        List<CellModel> cells = new ArrayList<>();
        for (int place = 0; place < bleed.size(); place++) {
            CellModel cell = pack.cells().get(place);
            double left = cell.chargeFraction() - bleed.get(place) / cell.capacityCoulombs();
            cells.add(new CellModel(Math.max(0, left), cell.capacityCoulombs(), cell.stepOhms()));
        }
        return pack.withCells(cells);
    }
}
