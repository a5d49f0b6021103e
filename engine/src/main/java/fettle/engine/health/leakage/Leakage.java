package fettle.engine.health.leakage;

import fettle.engine.cell.RestCurve;
import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.Check;
import fettle.engine.pack.MeterAccuracy;
import fettle.engine.pack.PackHistory;
import fettle.engine.pack.Run;
import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Loss at rest of every cell of a pack, from its checks.
 *
 * <p>Formula: checks with nothing noted between them form a stay. In each stay charge falls along a straight line; one slope
 * per cell over all stays, each with its own start, by least squares weighted with the variance of a rest reading. For the
 * excess the line goes through the cell's charge less the mean of the others: errors of the curve then cancel.
 */
public final class Leakage {
    /** Cells of a pack usually differ by less, as a share of capacity a day: half of 1 to 3 % a month. From memory. */
    private static final double USUAL_SHARE_PER_DAY = 0.0005;

    private static final double BEYOND_DOUBT = 3.5; // standard deviations; one false alarm in some thousand cells
    private static final double LEAST_SPAN_SECONDS = TradeUnit.DAY.toSi(4);
    private static final double LEAST_SLOPE_VOLTS = 0.05; // flatter, volts do not tell charge

    private Leakage() {}

    /**
     * The cells' losses; empty while no stay of several checks spans four days, or cells were not read.
     *
     * @param capacityCoulombs charge from empty to full [C]
     */
    public static List<CellLeak> of(
            PackHistory history, RestCurve curve, MeterAccuracy meter, double capacityCoulombs) {
        List<List<Check>> stays = stays(history);
        int cells = history.pack().cellsInSeries();
        List<CellLeak> leaks = new ArrayList<>();
        for (int cell = 0; cell < cells && !stays.isEmpty(); cell++) {
            Slope loss = new Slope();
            Slope excess = new Slope();
            for (List<Check> stay : stays) {
                loss.add(stay, readings(stay, cell, curve, meter, Against.NOTHING));
                excess.add(stay, readings(stay, cell, curve, meter, Against.OTHERS));
            }
            Estimate beyond = excess.lossAmps(capacityCoulombs);
            boolean alarm = cells > 1
                    && beyond.value() > BEYOND_DOUBT * beyond.standardDeviation()
                    && beyond.value() * TradeUnit.DAY.toSi(1) > USUAL_SHARE_PER_DAY * capacityCoulombs;
            leaks.add(new CellLeak(cell + 1, loss.lossAmps(capacityCoulombs), beyond, alarm));
        }
        return leaks;
    }

    private enum Against {
        NOTHING,
        OTHERS
    }

    /** Charge and its variance, one per check. */
    private record Readings(double[] charge, double[] variance) {}

    private static Readings readings(
            List<Check> stay, int cell, RestCurve curve, MeterAccuracy meter, Against against) {
        double[] charge = new double[stay.size()];
        double[] variance = new double[stay.size()];
        double middle = stay.stream()
                .mapToDouble(check -> curve.charge(check.cellRestVolts().get(cell)))
                .average()
                .orElseThrow();
        double slope = Math.max(LEAST_SLOPE_VOLTS, curve.slopeVolts(middle));
        for (int i = 0; i < charge.length; i++) {
            List<Double> volts = stay.get(i).cellRestVolts();
            charge[i] = curve.charge(volts.get(cell));
            variance[i] = meter.cellVolts() * meter.cellVolts() / (slope * slope);
            if (against == Against.OTHERS && volts.size() > 1) {
                double others = IntStream.range(0, volts.size())
                        .filter(other -> other != cell)
                        .mapToDouble(other -> curve.charge(volts.get(other)))
                        .average()
                        .orElseThrow();
                charge[i] -= others;
                variance[i] *= 1 + 1.0 / (volts.size() - 1);
            }
        }
        return new Readings(charge, variance);
    }

    /** One slope over several stays, each with its own level. */
    private static final class Slope {
        private double across;
        private double along;

        void add(List<Check> stay, Readings readings) {
            double weights = 0;
            double meanTime = 0;
            double meanCharge = 0;
            for (int i = 0; i < readings.charge().length; i++) {
                double weight = 1 / readings.variance()[i];
                weights += weight;
                meanTime += weight * seconds(stay, i);
                meanCharge += weight * readings.charge()[i];
            }
            meanTime /= weights;
            meanCharge /= weights;
            for (int i = 0; i < readings.charge().length; i++) {
                double time = seconds(stay, i) - meanTime;
                across += time * time / readings.variance()[i];
                along += time * (readings.charge()[i] - meanCharge) / readings.variance()[i];
            }
        }

        Estimate lossAmps(double capacityCoulombs) {
            double deviation = capacityCoulombs / Math.sqrt(across);
            return new Estimate(
                    -capacityCoulombs * along / across, deviation, List.of(new Driver("meter accuracy", deviation)));
        }

        private static double seconds(List<Check> stay, int i) {
            return Duration.between(stay.get(0).takenAt(), stay.get(i).takenAt())
                    .toSeconds();
        }
    }

    private static List<List<Check>> stays(PackHistory history) {
        List<Instant> uses = Stream.concat(
                        history.charges().stream().map(ChargeRecord::endedAt),
                        history.runs().stream().map(Run::endedAt))
                .toList();
        List<List<Check>> stays = new ArrayList<>();
        List<Check> stay = new ArrayList<>();
        for (Check check : history.checks()) {
            if (check.cellRestVolts().size() != history.pack().cellsInSeries()) {
                continue;
            }
            if (!stay.isEmpty() && usedBetween(uses, stay.get(stay.size() - 1).takenAt(), check.takenAt())) {
                stays.add(stay);
                stay = new ArrayList<>();
            }
            stay.add(check);
        }
        stays.add(stay);
        stays.removeIf(each -> each.size() < 2
                || Duration.between(
                                        each.get(0).takenAt(),
                                        each.get(each.size() - 1).takenAt())
                                .toSeconds()
                        < LEAST_SPAN_SECONDS);
        return stays;
    }

    private static boolean usedBetween(List<Instant> uses, Instant from, Instant to) {
        return uses.stream().anyMatch(use -> !use.isBefore(from) && !use.isAfter(to));
    }
}
