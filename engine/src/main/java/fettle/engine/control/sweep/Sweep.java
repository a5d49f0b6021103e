package fettle.engine.control.sweep;

import fettle.engine.control.servo.PulseScale;
import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Readings in the order they were taken: up, down, once or more often, or a series with holds.
 *
 * @param points the readings, at least {@value #FEWEST_PULSES} different pulses over 100 µs or more
 * @param idleAmps current at rest without load [A]; {@code null} if it was not read
 * @param stallAmps the servo's stall current at this voltage [A]; {@code null} if not known
 */
public record Sweep(
        List<SweepPoint> points,
        @Nullable Double idleAmps,
        @Nullable Double stallAmps) {
    /** Fewest pulses that tell two straight lines and their scatter on either side. */
    public static final int FEWEST_PULSES = 12;

    private static final double SHORTEST_SPAN = TradeUnit.MICROSECOND.toSi(100);
    private static final int MOST_POINTS = 200_000;
    private static final int MOST_FAULTS = 10;

    public Sweep {
        points = List.copyOf(points);
        Faults faults = new Faults();
        int told = 0;
        for (int row = 0; row < points.size() && told < MOST_FAULTS; row++) {
            told += check(faults, points.get(row), row + 1);
        }
        faults.range("idleAmps", "current at rest", idleAmps, TradeUnit.AMPERE, 0, 5, "Read it with the servo still.");
        faults.range("stallAmps", "stall current", stallAmps, TradeUnit.AMPERE, 0.02, 100, "See the servo's sheet.");
        faults.refuse();
        long pulses = points.stream().map(SweepPoint::pulseSeconds).distinct().count();
        if (pulses < FEWEST_PULSES || points.size() > MOST_POINTS) {
            faults.add(
                    "points",
                    "the sweep has " + points.size() + " readings at " + pulses + " different pulses; expected "
                            + FEWEST_PULSES + " pulses or more and at most " + MOST_POINTS
                            + " readings. Take steps of 10 to 25 µs from one end to the other.");
        } else if (highestSeconds(points) - lowestSeconds(points) < SHORTEST_SPAN) {
            faults.add(
                    "points",
                    "the sweep spans "
                            + TradeUnit.MICROSECOND.print(highestSeconds(points) - lowestSeconds(points), 0)
                            + "; expected 100 µs or more. Sweep the whole travel.");
        }
        faults.refuse();
    }

    public static Sweep of(List<SweepPoint> points) {
        return new Sweep(points, null, null);
    }

    public double lowestSeconds() {
        return lowestSeconds(points);
    }

    public double highestSeconds() {
        return highestSeconds(points);
    }

    private static int check(Faults faults, SweepPoint point, int row) {
        Faults one = new Faults();
        String at = " of reading " + row;
        PulseScale.checkPulse(one, "points." + row + ".pulse", "pulse" + at, point.pulseSeconds());
        one.range(
                "points." + row + ".amps",
                "current" + at,
                point.amps(),
                TradeUnit.AMPERE,
                -0.05,
                50,
                "Check whether it is in mA or A.");
        one.range(
                "points." + row + ".angle",
                "angle" + at,
                point.angleRadians(),
                TradeUnit.DEGREE,
                -180,
                180,
                "Angles are in degrees from any zero.");
        return faults.addAll(one);
    }

    private static double lowestSeconds(List<SweepPoint> points) {
        return points.stream().mapToDouble(SweepPoint::pulseSeconds).min().orElseThrow();
    }

    private static double highestSeconds(List<SweepPoint> points) {
        return points.stream().mapToDouble(SweepPoint::pulseSeconds).max().orElseThrow();
    }
}
