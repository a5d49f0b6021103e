package fettle.engine.health;

import fettle.engine.cell.DefaultCurves;
import fettle.engine.cell.RestCurve;
import fettle.engine.health.capacity.CapacityEstimator;
import fettle.engine.health.capacity.CapacityPair;
import fettle.engine.health.capacity.CapacityPrior;
import fettle.engine.health.capacity.CapacityReport;
import fettle.engine.health.capacity.Influence;
import fettle.engine.health.capacity.NotedCharges;
import fettle.engine.health.capacity.TracePairs;
import fettle.engine.health.leakage.CellLeak;
import fettle.engine.health.leakage.Leakage;
import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.Check;
import fettle.engine.pack.Finding;
import fettle.engine.pack.MeterAccuracy;
import fettle.engine.pack.Pack;
import fettle.engine.pack.PackHistory;
import fettle.engine.pack.PresentCapacity;
import fettle.engine.rule.Limits;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.RuleSet;
import fettle.engine.trace.TraceRecord;
import fettle.engine.units.Estimate;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a pack's record says of its health: a pure function of record and rules.
 *
 * @param capacity of the pack's mean cell; the label alone while nothing was noted
 * @param cells capacity of each cell where cells were read before charges; empty if there is no evidence
 * @param leaks loss at rest of each cell; empty if no stay of checks tells
 * @param capacityAgeing trend of capacity; {@code null} below three readings
 * @param resistanceAgeing trend of resistance; {@code null} below three readings
 * @param ladder the cells' resistances over time, from checks and traces
 * @param findings what it means for the pack's standing
 * @param passed what was asked and found in order
 */
public record PackHealth(
        CapacityReport capacity,
        List<Estimate> cells,
        List<CellLeak> leaks,
        @Nullable Ageing capacityAgeing,
        @Nullable Ageing resistanceAgeing,
        List<LadderReading> ladder,
        List<Finding> findings,
        List<String> passed) {
    public PackHealth {
        cells = List.copyOf(cells);
        leaks = List.copyOf(leaks);
        ladder = List.copyOf(ladder);
        findings = List.copyOf(findings);
        passed = List.copyOf(passed);
    }

    /** The health of a pack without traces. */
    public static PackHealth of(PackHistory history, RuleSet rules, MeterAccuracy meter) {
        return of(history, List.of(), rules, meter);
    }

    /**
     * The health of a pack from what was noted and what was logged.
     *
     * @param history the record, the uses its traces tell of among the noted ones
     * @param traces its traces
     */
    public static PackHealth of(PackHistory history, List<TraceRecord> traces, RuleSet rules, MeterAccuracy meter) {
        Pack pack = history.pack();
        Limits limits = rules.limitsFor(pack.chemistry(), pack.tag(), pack.makersLimits());
        RestCurve curve = DefaultCurves.of(pack.chemistry());
        NotedCharges noted = NotedCharges.of(history, curve, limits.si(Quantity.CHARGE_LIMIT), meter);
        CapacityPrior label = CapacityPrior.ofLabel(pack);
        List<CapacityPair> pairs = oldestFirst(noted.pairs(), TracePairs.of(traces, pack, curve, meter, null));
        List<LadderReading> ladder = ResistanceLadder.of(history, traces);
        CapacityReport capacity = CapacityEstimator.of(pairs, label);
        List<CellLeak> leaks = pack.chemistry().isLithium()
                ? Leakage.of(history, curve, meter, capacity.capacity().value())
                : List.of();
        PackAgeing ageing = new PackAgeing(history, began(history));
        HealthFindings findings = new HealthFindings(capacity, leaks, ladder, limits);
        return new PackHealth(
                capacity,
                cells(
                        cell -> oldestFirst(noted.pairsOfCell(cell), TracePairs.of(traces, pack, curve, meter, cell)),
                        pairs,
                        capacity,
                        pack.cellsInSeries()),
                leaks,
                ageing.capacity(pairs, limits.si(Quantity.RETIRE_CAPACITY)),
                ageing.resistance(limits.si(Quantity.RETIRE_RESISTANCE)),
                ladder,
                findings.found(),
                findings.passed());
    }

    private static List<Estimate> cells(
            IntFunction<List<CapacityPair>> ofCell, List<CapacityPair> pairs, CapacityReport capacity, int count) {
        List<Estimate> cells = new ArrayList<>();
        for (int cell = 1; cell <= count; cell++) {
            List<CapacityPair> own = ofCell.apply(cell);
            if (own.isEmpty()) {
                return List.of();
            }
            cells.add(CapacityEstimator.ofCell(own, pairs, capacity));
        }
        return cells;
    }

    /** What the record tells of capacity, for the assessment; the label where it tells nothing. */
    public PresentCapacity present(Pack pack) {
        int pieces = capacity.influences().size();
        if (pieces == 0) {
            return PresentCapacity.ofLabel(pack);
        }
        Influence most = Collections.max(capacity.influences(), Comparator.comparingDouble(Influence::share));
        String count = pieces == 1 ? "" : pieces + " charges and runs, most of all ";
        return new PresentCapacity(
                capacity.capacity(),
                capacity.ratedCoulombs(),
                count + most.pair().how());
    }

    private static List<CapacityPair> oldestFirst(List<CapacityPair> noted, List<CapacityPair> logged) {
        return Stream.concat(noted.stream(), logged.stream())
                .sorted(Comparator.comparing(CapacityPair::at))
                .toList();
    }

    private static Instant began(PackHistory history) {
        return Stream.concat(
                        history.checks().stream().map(Check::takenAt),
                        history.charges().stream().map(ChargeRecord::endedAt))
                .min(Instant::compareTo)
                .orElse(Instant.EPOCH);
    }
}
