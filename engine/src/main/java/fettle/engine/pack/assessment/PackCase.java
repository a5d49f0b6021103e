package fettle.engine.pack.assessment;

import fettle.engine.cell.DefaultCurves;
import fettle.engine.cell.RestCurve;
import fettle.engine.pack.CellState;
import fettle.engine.pack.Check;
import fettle.engine.pack.MeterAccuracy;
import fettle.engine.pack.Pack;
import fettle.engine.pack.PackHistory;
import fettle.engine.pack.PresentCapacity;
import fettle.engine.rule.Limits;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.RuleSet;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Working;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What every inspection of a pack looks at.
 *
 * @param history the record
 * @param capacity what it holds from empty to full
 * @param limits the rules that hold for this pack
 * @param curve the rest-voltage curve used
 * @param meter how well volts were read
 * @param now the instant of the assessment
 * @param latest the latest check; {@code null} if never checked
 * @param cells per-cell state from the latest check with cell volts
 * @param settlingVolts what was still to settle at that check [V], one standard deviation
 * @param evidence what the record says of charge, oldest first
 */
record PackCase(
        PackHistory history,
        PresentCapacity capacity,
        Limits limits,
        RestCurve curve,
        MeterAccuracy meter,
        Instant now,
        @Nullable Check latest,
        List<CellState> cells,
        double settlingVolts,
        List<ChargeEvidence> evidence) {
    /** A temperature tells nothing of now after this: a pack takes about an hour to follow the room. From memory. */
    private static final double FRESH_SECONDS = TradeUnit.HOUR.toSi(3);

    static PackCase of(PackHistory history, PresentCapacity capacity, RuleSet rules, MeterAccuracy meter, Instant now) {
        Pack pack = history.pack();
        Limits limits = rules.limitsFor(pack.chemistry(), pack.tag(), pack.makersLimits());
        RestCurve curve = DefaultCurves.of(pack.chemistry());
        List<Check> checks = history.checks();
        Check latest = checks.isEmpty() ? null : checks.get(checks.size() - 1);
        Check read = latestWithCells(checks);
        return new PackCase(
                history,
                capacity,
                limits,
                curve,
                meter,
                now,
                latest,
                read == null ? List.of() : cells(read, curve, meter),
                RestCharge.restVolts(read == null ? null : read.restSeconds()),
                ChargeTimeline.of(history, capacity, limits, curve, meter));
    }

    Pack pack() {
        return history.pack();
    }

    double limit(Quantity quantity) {
        return limits.si(quantity);
    }

    /** Charge now, of the weakest cell where cells were read; {@code null} if the latest entry does not tell. */
    @Nullable
    Estimate charge() {
        return evidence.isEmpty() ? null : evidence.get(evidence.size() - 1).lowest();
    }

    /** Pack temperature now [K]: that of a check in the last three hours; {@code null} if there is none. */
    @Nullable
    Double temperatureKelvins() {
        boolean fresh =
                latest != null && Duration.between(latest.takenAt(), now).toSeconds() <= FRESH_SECONDS;
        return fresh ? latest.temperatureKelvins() : null;
    }

    /** True if pack volts are all there is although the pack has several cells that could be read. */
    boolean packVoltsOnly() {
        return latest != null
                && latest.cellRestVolts().isEmpty()
                && latest.packRestVolts() != null
                && pack().cellsInSeries() > 1
                && pack().chemistry().isLithium();
    }

    private static @Nullable Check latestWithCells(List<Check> checks) {
        for (int i = checks.size() - 1; i >= 0; i--) {
            if (!checks.get(i).cellRestVolts().isEmpty()) {
                return checks.get(i);
            }
        }
        return null;
    }

    private static List<CellState> cells(Check check, RestCurve curve, MeterAccuracy meter) {
        double settling = RestCharge.restVolts(check.restSeconds());
        List<CellState> cells = new ArrayList<>();
        for (int i = 0; i < check.cellRestVolts().size(); i++) {
            double volts = check.cellRestVolts().get(i);
            Estimate charge = RestCharge.of(curve, volts, meter.cellVolts(), settling);
            cells.add(new CellState(
                    i + 1,
                    volts,
                    charge,
                    Working.of(RestCharge.step(i + 1, volts, charge, curve, meter.cellVolts(), settling))));
        }
        return cells;
    }
}
