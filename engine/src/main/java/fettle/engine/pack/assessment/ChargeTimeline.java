package fettle.engine.pack.assessment;

import fettle.engine.cell.RestCurve;
import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.Check;
import fettle.engine.pack.MeterAccuracy;
import fettle.engine.pack.Pack;
import fettle.engine.pack.PackHistory;
import fettle.engine.pack.PresentCapacity;
import fettle.engine.pack.Run;
import fettle.engine.rule.Limits;
import fettle.engine.rule.Quantity;
import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The charge in a pack over its record: one piece of evidence an entry, oldest first.
 *
 * <p>A charge that ended within {@value #AT_LIMIT_VOLTS} V per cell of the limit filled the pack; a run with nothing noted
 * leaves the charge unknown. Self-discharge between entries is left out.
 */
final class ChargeTimeline {
    /** Charge from which a pack counts as kept full. Common practice, no source. */
    static final double FULL_FRACTION = 0.80;

    private static final double AT_LIMIT_VOLTS = 0.05;
    private static final double CHARGED_DEVIATION = 0.03;
    private static final double NOTED_DEVIATION = 0.10;
    private static final double RETURNED_SHARE_DEVIATION = 0.05;

    private final Pack pack;
    private final PresentCapacity capacity;
    private final Limits limits;
    private final RestCurve curve;
    private final MeterAccuracy meter;
    private final List<ChargeEvidence> evidence = new ArrayList<>();

    private ChargeTimeline(Pack pack, PresentCapacity capacity, Limits limits, RestCurve curve, MeterAccuracy meter) {
        this.pack = pack;
        this.capacity = capacity;
        this.limits = limits;
        this.curve = curve;
        this.meter = meter;
    }

    static List<ChargeEvidence> of(
            PackHistory history, PresentCapacity capacity, Limits limits, RestCurve curve, MeterAccuracy meter) {
        ChargeTimeline timeline = new ChargeTimeline(history.pack(), capacity, limits, curve, meter);
        List<Entry> entries = new ArrayList<>();
        history.checks().forEach(check -> entries.add(new Entry(check.takenAt(), () -> timeline.add(check))));
        history.charges().forEach(charge -> entries.add(new Entry(charge.endedAt(), () -> timeline.add(charge))));
        history.runs().forEach(run -> entries.add(new Entry(run.endedAt(), () -> timeline.add(run))));
        entries.sort(Comparator.comparing(Entry::at));
        entries.forEach(entry -> entry.read().run());
        return timeline.evidence;
    }

    /** Since when the pack has been kept full without a break; {@code null} if it is not full now. */
    static @Nullable Instant fullSince(List<ChargeEvidence> evidence) {
        Instant since = null;
        for (ChargeEvidence piece : evidence) {
            if (piece.highestFraction() < FULL_FRACTION) {
                since = null;
            } else if (since == null) {
                since = piece.at();
            }
        }
        return since;
    }

    private void add(Check check) {
        List<Double> volts = check.cellRestVolts();
        Double packVolts = check.packRestVolts();
        if (volts.isEmpty() && packVolts == null) {
            return;
        }
        List<Double> cells = volts.isEmpty() ? List.of(packVolts / pack.cellsInSeries()) : volts;
        double settling = RestCharge.restVolts(check.restSeconds());
        double lowest = cells.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        double highest = cells.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        double meterVolts = volts.isEmpty() ? meter.cellVolts() / Math.sqrt(pack.cellsInSeries()) : meter.cellVolts();
        evidence.add(new ChargeEvidence(
                check.takenAt(),
                RestCharge.of(curve, lowest, meterVolts, settling),
                held(curve.charge(highest)),
                volts.isEmpty() ? "pack volts at rest" : "weakest cell at rest"));
    }

    private void add(ChargeRecord charge) {
        double limit = limits.si(Quantity.CHARGE_LIMIT);
        Double endVolts = charge.endPackVolts();
        Double returned = charge.returnedCoulombs();
        if (endVolts != null && endVolts / pack.cellsInSeries() >= limit - AT_LIMIT_VOLTS) {
            note(charge.endedAt(), 1, CHARGED_DEVIATION, "charged to the limit");
        } else if (endVolts != null) {
            note(
                    charge.endedAt(),
                    held(curve.charge(endVolts / pack.cellsInSeries())),
                    NOTED_DEVIATION,
                    "end volts of a charge");
        } else if (returned != null && before() != null) {
            Estimate start = before();
            double share = returned / capacity.plannedCoulombs();
            double deviation = Math.hypot(start.standardDeviation(), RETURNED_SHARE_DEVIATION * share);
            note(charge.endedAt(), held(start.value() + share), deviation, "put-back on top of what was there");
        } else {
            evidence.add(new ChargeEvidence(charge.endedAt(), null, 0, "a charge without end volts"));
        }
    }

    private void add(Run run) {
        Double fraction = run.remainingFraction();
        Double packVolts = run.remainingPackVolts();
        if (fraction != null) {
            note(run.endedAt(), fraction, NOTED_DEVIATION, "what remained after a run");
        } else if (packVolts != null) {
            note(
                    run.endedAt(),
                    held(curve.charge(packVolts / pack.cellsInSeries())),
                    NOTED_DEVIATION,
                    "volts that remained after a run");
        } else {
            evidence.add(new ChargeEvidence(run.endedAt(), null, 0, "a run with nothing noted of what remained"));
        }
    }

    private @Nullable Estimate before() {
        return evidence.isEmpty() ? null : evidence.get(evidence.size() - 1).lowest();
    }

    private void note(Instant at, double fraction, double deviation, String how) {
        evidence.add(new ChargeEvidence(
                at, new Estimate(fraction, deviation, List.of(new Driver(how, deviation))), fraction, how));
    }

    private static double held(double fraction) {
        return Math.max(0, Math.min(1, fraction));
    }

    private record Entry(Instant at, Runnable read) {}
}
