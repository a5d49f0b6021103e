package fettle.engine.health.capacity;

import fettle.engine.cell.RestCurve;
import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.Check;
import fettle.engine.pack.MeterAccuracy;
import fettle.engine.pack.PackHistory;
import fettle.engine.units.TradeUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Evidence on capacity in charges noted by hand: put-back, with rest volts before and after.
 *
 * <p>Before is the last check before the charge. After is full where the charge ended at the limit, or else the first check
 * after it. Nothing noted may lie between; a use nobody noted makes an outlier, not a gap. Lithium packs only: put-back of NiMH and lead-acid is not what stays.
 */
public final class NotedCharges {
    /** Put-back is read to a few mAh, and chargers start and stop counting late. From memory. */
    private static final double RETURNED_DEVIATION_COULOMBS = TradeUnit.MILLIAMPERE_HOUR.toSi(10);

    private static final double RETURNED_SHARE_DEVIATION = 0.01; // random part of a charger's counter. From memory

    /** Where a charger stops: taper currents of C/10 to C/50 leave 0 to 3 % out. From memory. */
    private static final double FULL_FRACTION = 0.985;

    private static final double FULL_DEVIATION = 0.01;

    private static final double AT_LIMIT_VOLTS = 0.03; // per cell; a charger's end point is read this well
    private static final double LONGEST_SECONDS = TradeUnit.DAY.toSi(30); // from check to charge, or charge to check
    private static final double LOSS_PER_DAY = 0.0007; // self-discharge of lithium cells, 2 % a month. From memory
    private static final double LEAST_CHANGE = 0.15; // below, rest volts say too little

    private final PackHistory history;
    private final RestCurve curve;
    private final double limitVolts;
    private final MeterAccuracy meter;

    private NotedCharges(PackHistory history, RestCurve curve, double limitVolts, MeterAccuracy meter) {
        this.history = history;
        this.curve = curve;
        this.limitVolts = limitVolts;
        this.meter = meter;
    }

    /**
     * Evidence of a record.
     *
     * @param chargeLimitVolts where the pack's charge ends [V per cell]
     */
    public static NotedCharges of(PackHistory history, RestCurve curve, double chargeLimitVolts, MeterAccuracy meter) {
        return new NotedCharges(history, curve, chargeLimitVolts, meter);
    }

    /** Pairs of the pack's mean cell, oldest first. */
    public List<CapacityPair> pairs() {
        return charges().flatMap(charge -> pair(charge, null).stream()).toList();
    }

    /** Pairs of one cell, from 1, where cells were read; a balancer's share of the put-back is in its ±. */
    public List<CapacityPair> pairsOfCell(int number) {
        return charges().flatMap(charge -> pair(charge, number - 1).stream()).toList();
    }

    private Stream<ChargeRecord> charges() {
        return history.pack().chemistry().isLithium()
                ? history.charges().stream().filter(charge -> charge.returnedCoulombs() != null)
                : Stream.empty();
    }

    private Optional<CapacityPair> pair(ChargeRecord charge, @Nullable Integer cell) {
        Double returned = charge.returnedCoulombs();
        Optional<RestReading> before = before(charge, cell);
        Optional<RestReading> after = full(charge).or(() -> after(charge, cell));
        if (returned == null || before.isEmpty() || after.isEmpty()) {
            return Optional.empty();
        }
        RestReading start = before.get();
        RestReading end = after.get();
        double change = end.charge() - start.charge();
        if (change < LEAST_CHANGE || !(returned > 0)) {
            return Optional.empty();
        }
        double days = TradeUnit.DAY.fromSi(
                Duration.between(start.at(), end.at()).abs().toSeconds());
        double random = Math.hypot(Math.hypot(start.random(), end.random()), LOSS_PER_DAY * days);
        return Optional.of(new CapacityPair(
                charge.endedAt(),
                change,
                random,
                Math.hypot(start.curve(), end.curve()),
                returned,
                Math.hypot(RETURNED_DEVIATION_COULOMBS, RETURNED_SHARE_DEVIATION * returned),
                TradeUnit.MILLIAMPERE_HOUR.print(returned, 0) + " put back from "
                        + TradeUnit.PERCENT.print(start.charge(), 0) + " to "
                        + TradeUnit.PERCENT.print(end.charge(), 0)));
    }

    private Optional<RestReading> before(ChargeRecord charge, @Nullable Integer cell) {
        return lastBefore(charge.endedAt())
                .filter(check -> !somethingBetween(check.takenAt(), charge.endedAt(), charge))
                .flatMap(check -> rest(check, cell));
    }

    private Optional<RestReading> after(ChargeRecord charge, @Nullable Integer cell) {
        return history.checks().stream()
                .filter(check -> check.takenAt().isAfter(charge.endedAt()) && hasVolts(check))
                .findFirst()
                .filter(check -> !somethingBetween(charge.endedAt(), check.takenAt(), charge))
                .flatMap(check -> rest(check, cell));
    }

    private Optional<RestReading> full(ChargeRecord charge) {
        Double volts = charge.endPackVolts();
        boolean atLimit = volts != null && volts / history.pack().cellsInSeries() >= limitVolts - AT_LIMIT_VOLTS;
        return atLimit
                ? Optional.of(new RestReading(charge.endedAt(), FULL_FRACTION, FULL_DEVIATION, 0))
                : Optional.empty();
    }

    private Optional<Check> lastBefore(Instant when) {
        return history.checks().stream()
                .filter(check -> check.takenAt().isBefore(when) && hasVolts(check))
                .reduce((earlier, later) -> later);
    }

    private static boolean hasVolts(Check check) {
        return !check.cellRestVolts().isEmpty() || check.packRestVolts() != null;
    }

    private boolean somethingBetween(Instant from, Instant to, ChargeRecord except) {
        boolean tooLong = Duration.between(from, to).toSeconds() > LONGEST_SECONDS;
        boolean run = history.runs().stream()
                .anyMatch(each -> each.endedAt().isAfter(from) && each.endedAt().isBefore(to));
        boolean charged = history.charges().stream()
                .anyMatch(each -> each != except
                        && each.endedAt().isAfter(from)
                        && !each.endedAt().isAfter(to));
        return tooLong || run || charged;
    }

    private Optional<RestReading> rest(Check check, @Nullable Integer cell) {
        List<Double> volts = check.cellRestVolts();
        if (cell != null) {
            return cell < volts.size() ? Optional.of(rest(check, List.of(volts.get(cell)))) : Optional.empty();
        }
        Double packVolts = check.packRestVolts();
        if (volts.isEmpty() && packVolts != null) {
            return Optional.of(rest(check, List.of(packVolts / history.pack().cellsInSeries())));
        }
        return volts.isEmpty() ? Optional.empty() : Optional.of(rest(check, volts));
    }

    private RestReading rest(Check check, List<Double> volts) {
        return RestReading.of(check.takenAt(), volts, check.restSeconds(), curve, meter);
    }
}
