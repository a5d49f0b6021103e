package fettle.engine.health;

import fettle.engine.health.capacity.CapacityReport;
import fettle.engine.health.leakage.CellLeak;
import fettle.engine.pack.Finding;
import fettle.engine.pack.Standing;
import fettle.engine.rule.Limits;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.Rule;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What capacity and leakage mean for a pack's standing. */
final class HealthFindings {
    private static final Citation STRAIGHT_FALL = Citation.commonPractice(
            "charge at rest falls along a straight line; one cell faster than its neighbours leaks");

    private final List<Finding> found = new ArrayList<>();
    private final List<String> passed = new ArrayList<>();

    HealthFindings(CapacityReport capacity, List<CellLeak> leaks, List<LadderReading> ladder, Limits limits) {
        capacity(capacity, limits.rule(Quantity.RETIRE_CAPACITY));
        leaks(leaks);
        resistance(ladder, limits.rule(Quantity.RETIRE_RESISTANCE));
    }

    List<Finding> found() {
        return found;
    }

    List<String> passed() {
        return passed;
    }

    private void capacity(CapacityReport report, Rule limit) {
        if (report.influences().isEmpty()) {
            return;
        }
        if (!report.surelyBelow(limit.valueSi())) {
            passed.add("measured capacity is not surely below " + limit.print() + " of its label");
            return;
        }
        String measured = TradeUnit.MILLIAMPERE_HOUR.print(report.capacity(), 0);
        found.add(new Finding(
                "capacity-below-limit",
                Standing.LIMITED,
                "holds " + measured + ", " + TradeUnit.PERCENT.print(report.shareOfLabel(), 0)
                        + " of its label, below the limit of " + limit.print(),
                "Plan shorter runs by what it holds, and think of retiring it.",
                report.working()));
    }

    private void leaks(List<CellLeak> leaks) {
        leaks.stream().filter(CellLeak::alarm).forEach(leak -> found.add(leak(leak)));
        if (!leaks.isEmpty() && leaks.stream().noneMatch(CellLeak::alarm)) {
            passed.add("no cell leaks faster than its neighbours at rest");
        }
    }

    private void resistance(List<LadderReading> ladder, Rule limit) {
        Optional<Finding> finding = ResistanceLadder.finding(ladder, limit);
        finding.ifPresent(found::add);
        long traces = ladder.stream()
                .filter(reading -> reading.method().equals(ResistanceLadder.TRACES))
                .map(LadderReading::at)
                .distinct()
                .count();
        if (traces > 1 && finding.isEmpty()) {
            passed.add("no cell's resistance by its traces has reached " + limit.print() + " of its first");
        }
    }

    private static Finding leak(CellLeak leak) {
        String excess = perDay(leak.excessAmps());
        return new Finding(
                "leaking-cell",
                Standing.GROUNDED,
                "cell " + leak.number() + " loses " + excess
                        + " more at rest than the others: a possible internal short",
                "Do not charge it. Keep it apart on a surface that cannot burn, read the cells again in a few days, and follow "
                        + "its maker's instructions or take it to a battery collection point.",
                Working.of(new Step(
                        "loss at rest of cell " + leak.number(),
                        "slope of (charge of the cell − mean of the others) over time, between uses",
                        List.of("its own loss = " + perDay(leak.lossAmps())),
                        excess,
                        STRAIGHT_FALL)));
    }

    /** A current at rest as people say it. */
    static String perDay(Estimate amps) {
        double day = TradeUnit.DAY.toSi(1);
        return TradeUnit.MILLIAMPERE_HOUR.print(amps.times(day), 1) + " a day";
    }
}
