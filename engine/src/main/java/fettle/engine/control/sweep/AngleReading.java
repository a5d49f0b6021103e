package fettle.engine.control.sweep;

import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.stat.descriptive.moment.StandardDeviation;
import org.hipparchus.stat.regression.SimpleRegression;

/** Slope and hysteresis from the angles of the free travel. */
final class AngleReading {
    private static final int FEWEST = 5;
    private static final double DEVIATIONS_OF_MEDIAN = 1.2533; // of the mean, for a normal scatter

    private AngleReading() {}

    static Optional<AngleTrack> of(List<Pass> passes, double lowestSeconds, double highestSeconds) {
        List<List<Pass.Stop>> rising = angled(passes, Direction.RISING, lowestSeconds, highestSeconds);
        List<List<Pass.Stop>> falling = angled(passes, Direction.FALLING, lowestSeconds, highestSeconds);
        List<List<Pass.Stop>> all = new ArrayList<>(rising);
        all.addAll(falling);
        if (all.isEmpty()) {
            return Optional.empty();
        }
        Estimate slope = slope(all);
        if (rising.isEmpty() || falling.isEmpty()) {
            return Optional.of(new AngleTrack(slope, null, null));
        }
        Estimate hysteresis = hysteresis(rising, falling);
        return Optional.of(new AngleTrack(slope, hysteresis, hysteresis.times(1 / Math.abs(slope.value()))));
    }

    private static List<List<Pass.Stop>> angled(List<Pass> passes, Direction way, double lowest, double highest) {
        return passes.stream()
                .filter(pass -> pass.direction() == way)
                .map(pass -> pass.stops().stream()
                        .filter(stop -> stop.angleRadians() != null
                                && stop.pulseSeconds() >= lowest
                                && stop.pulseSeconds() <= highest)
                        .toList())
                .filter(stops -> stops.size() >= FEWEST)
                .toList();
    }

    private static Estimate slope(List<List<Pass.Stop>> passes) {
        double sum = 0;
        double variance = 0;
        for (List<Pass.Stop> pass : passes) {
            SimpleRegression line = new SimpleRegression();
            pass.forEach(stop -> line.addData(stop.pulseSeconds(), angle(stop)));
            sum += line.getSlope();
            variance += line.getSlopeStdErr() * line.getSlopeStdErr();
        }
        int count = passes.size();
        return Estimate.ofIndependent(
                sum / count, List.of(new Driver("scatter of the angles", Math.sqrt(variance) / count)));
    }

    private static Estimate hysteresis(List<List<Pass.Stop>> rising, List<List<Pass.Stop>> falling) {
        double[] gaps = rising.stream()
                .flatMap(up -> falling.stream().flatMap(down -> up.stream().flatMap(stop -> gap(stop, down).stream())))
                .mapToDouble(Double::doubleValue)
                .toArray();
        if (gaps.length < FEWEST) {
            return new Estimate(0, 0, List.of());
        }
        double scatter = new StandardDeviation().evaluate(gaps) * DEVIATIONS_OF_MEDIAN / Math.sqrt(gaps.length);
        return Estimate.ofIndependent(
                Math.abs(Samples.median(gaps)), List.of(new Driver("scatter of the angles", scatter)));
    }

    /** Angle at a stop less the other way's angle at the same pulse, by a straight line between its neighbours. */
    private static Optional<Double> gap(Pass.Stop stop, List<Pass.Stop> other) {
        for (int at = 1; at < other.size(); at++) {
            Pass.Stop before = other.get(at - 1);
            Pass.Stop after = other.get(at);
            if (before.pulseSeconds() < after.pulseSeconds()
                    && before.pulseSeconds() <= stop.pulseSeconds()
                    && stop.pulseSeconds() <= after.pulseSeconds()) {
                double part =
                        (stop.pulseSeconds() - before.pulseSeconds()) / (after.pulseSeconds() - before.pulseSeconds());
                return Optional.of(angle(stop) - angle(before) * (1 - part) - angle(after) * part);
            }
        }
        return Optional.empty();
    }

    private static double angle(Pass.Stop stop) {
        Double angle = stop.angleRadians();
        if (angle == null) {
            throw new IllegalStateException("stops without angle were left out before");
        }
        return angle;
    }
}
