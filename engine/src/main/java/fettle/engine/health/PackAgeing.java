package fettle.engine.health;

import fettle.engine.cell.circuit.Arrhenius;
import fettle.engine.health.capacity.CapacityPair;
import fettle.engine.health.forecast.FadeBelief;
import fettle.engine.health.forecast.FadeTrend;
import fettle.engine.health.forecast.HealthPoint;
import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.Check;
import fettle.engine.pack.PackHistory;
import fettle.engine.units.TradeUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Turns a pack's record into readings of health against cycles and days. */
final class PackAgeing {
    private static final double UNKNOWN_TEMPERATURE_KELVINS = 293.15; // 20 °C, a room
    private static final double TEMPERATURE_DEVIATION_KELVINS = 3; // of a room nobody measured
    private static final double METER_SHARE_DEVIATION = 0.05; // repeat of a hand-held resistance reading. From memory
    private static final int BASELINE = 3;

    private final PackHistory history;
    private final Instant began;

    PackAgeing(PackHistory history, Instant began) {
        this.history = history;
        this.began = began;
    }

    /**
     * Capacity as a share of what the first pairs said, one reading a pair: what curve and counter err by, the same every time,
     * then cancels.
     */
    @Nullable
    Ageing capacity(List<CapacityPair> pairs, double limitShare) {
        double first = pairs.stream()
                .limit(BASELINE)
                .mapToDouble(pair -> pair.coulombs() / pair.changeFraction())
                .average()
                .orElse(1);
        List<HealthPoint> points = new ArrayList<>();
        for (CapacityPair pair : pairs) {
            double capacity = pair.coulombs() / pair.changeFraction();
            double relative = Math.hypot(
                    pair.changeDeviation() / Math.abs(pair.changeFraction()),
                    pair.coulombsDeviation() / Math.abs(pair.coulombs()));
            points.add(
                    new HealthPoint(cycles(pair.at()), days(pair.at()), capacity / first, relative * capacity / first));
        }
        return trend(points, FadeBelief.LITHIUM, limitShare);
    }

    /**
     * Resistance at 25 °C against the mean of the first readings, as 2 less their ratio; readings of the way used most.
     *
     * @param largestRatio resistance over first resistance at which the pack retires
     */
    @Nullable
    Ageing resistance(double largestRatio) {
        List<Check> read = history.checks().stream()
                .filter(check -> !check.cellResistanceOhms().isEmpty())
                .toList();
        String method = read.isEmpty() ? "" : read.get(read.size() - 1).resistanceMethod();
        List<Check> alike = read.stream()
                .filter(check -> check.resistanceMethod().equals(method))
                .toList();
        double first = alike.stream()
                .limit(BASELINE)
                .mapToDouble(PackAgeing::at25)
                .average()
                .orElse(1);
        List<HealthPoint> points = alike.stream()
                .map(check -> {
                    double ratio = at25(check) / first;
                    return new HealthPoint(
                            cycles(check.takenAt()), days(check.takenAt()), 2 - ratio, ratio * relative(check));
                })
                .toList();
        return trend(points, FadeBelief.RESISTANCE, 2 - largestRatio);
    }

    private @Nullable Ageing trend(List<HealthPoint> points, FadeBelief belief, double limitShare) {
        return points.size() < Ageing.LEAST_POINTS
                ? null
                : Ageing.of(began, points, FadeTrend.through(points, belief), limitShare);
    }

    private static double at25(Check check) {
        double mean = check.cellResistanceOhms().stream()
                .mapToDouble(Double::doubleValue)
                .average()
                .orElseThrow();
        return mean / Arrhenius.WHOLE_CELL.factor(kelvins(check));
    }

    private static double relative(Check check) {
        double slope = Math.abs(Arrhenius.WHOLE_CELL.relativeSlope(kelvins(check)));
        double kelvins = check.temperatureKelvins() == null ? TEMPERATURE_DEVIATION_KELVINS : 1;
        return Math.hypot(METER_SHARE_DEVIATION, slope * kelvins);
    }

    private static double kelvins(Check check) {
        Double noted = check.temperatureKelvins();
        return noted == null ? UNKNOWN_TEMPERATURE_KELVINS : noted;
    }

    /** Full cycles noted up to an instant: put-back over the label; a charge without put-back counts as the mean of the rest. */
    private double cycles(Instant until) {
        double rated = history.pack().ratedCapacityCoulombs();
        double mean = history.charges().stream()
                .map(ChargeRecord::returnedCoulombs)
                .filter(returned -> returned != null)
                .mapToDouble(Double::doubleValue)
                .average()
                .orElse(rated);
        double sum = 0;
        for (ChargeRecord charge : history.charges()) {
            Double returned = charge.returnedCoulombs();
            if (!charge.endedAt().isAfter(until)) {
                sum += returned == null ? mean : returned;
            }
        }
        return sum / rated;
    }

    private double days(Instant at) {
        return TradeUnit.DAY.fromSi(Duration.between(began, at).toSeconds());
    }
}
