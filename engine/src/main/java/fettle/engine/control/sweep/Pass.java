package fettle.engine.control.sweep;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Readings of one way through a sweep, in rising order of pulse.
 *
 * @param direction which way it was taken
 * @param stops one for each pulse
 */
record Pass(Direction direction, List<Stop> stops) {
    /** Readings at one pulse from which on it counts as held. */
    private static final int HELD_READINGS = 3;

    private static final int FEWEST = 3;

    /**
     * All readings in a row at one pulse.
     *
     * @param movingAmps the first of them, taken as the servo moved
     * @param heldAmps median of the others [A]; {@code null} if there were fewer than three in all
     * @param angleRadians last angle of them [rad]; {@code null} if none was measured
     */
    record Stop(
            double pulseSeconds,
            double movingAmps,
            @Nullable Double heldAmps,
            @Nullable Double angleRadians) {}

    /** A way back shorter than this share of the sweep's span is jitter of the pulse, not a turn. */
    private static final double TURN = 0.04;

    /** Share of the readings that must lie on passes; else they were taken in no order. */
    private static final double IN_PASSES = 0.8;

    /** The passes of a sweep, split where its direction turns; shorter than three pulses is no pass. */
    static List<Pass> of(Sweep sweep) {
        List<Stop> stops = stops(sweep.points());
        double turn = TURN * (sweep.highestSeconds() - sweep.lowestSeconds());
        List<Pass> passes = new ArrayList<>();
        int start = 0;
        int extreme = 0;
        for (int at = 1; at < stops.size(); at++) {
            double way = pulse(stops, extreme) - pulse(stops, start);
            double back = pulse(stops, at) - pulse(stops, extreme);
            if (way * back >= 0) {
                extreme = at;
            } else if (Math.abs(back) > turn) {
                add(passes, stops.subList(start, extreme + 1));
                start = extreme;
                extreme = at;
            }
        }
        add(passes, stops.subList(start, stops.size()));
        int taken = passes.stream().mapToInt(pass -> pass.stops().size()).sum();
        return taken >= IN_PASSES * stops.size() ? passes : inNoOrder(stops);
    }

    /** Readings in no order of pulse: one pass, its direction taken as rising. */
    private static List<Pass> inNoOrder(List<Stop> stops) {
        List<Stop> rising = new ArrayList<>(stops);
        rising.sort(Comparator.comparingDouble(Stop::pulseSeconds));
        return List.of(new Pass(Direction.RISING, List.copyOf(rising)));
    }

    private static double pulse(List<Stop> stops, int at) {
        return stops.get(at).pulseSeconds();
    }

    Samples samples(boolean held) {
        return Samples.of(stops.stream()
                .map(stop -> new Samples.Sample(stop.pulseSeconds(), amps(stop, held)))
                .toList());
    }

    private static double amps(Stop stop, boolean held) {
        Double still = stop.heldAmps();
        return held && still != null ? still : stop.movingAmps();
    }

    private static void add(List<Pass> passes, List<Stop> stops) {
        if (stops.stream().map(Stop::pulseSeconds).distinct().count() < FEWEST) {
            return;
        }
        boolean falling = pulse(stops, stops.size() - 1) < pulse(stops, 0);
        List<Stop> rising = new ArrayList<>(stops);
        rising.sort(Comparator.comparingDouble(Stop::pulseSeconds));
        passes.add(new Pass(falling ? Direction.FALLING : Direction.RISING, List.copyOf(rising)));
    }

    private static List<Stop> stops(List<SweepPoint> points) {
        List<Stop> stops = new ArrayList<>();
        int start = 0;
        for (int at = 1; at <= points.size(); at++) {
            if (at == points.size()
                    || points.get(at).pulseSeconds() != points.get(start).pulseSeconds()) {
                stops.add(stop(points.subList(start, at)));
                start = at;
            }
        }
        return stops;
    }

    private static Stop stop(List<SweepPoint> same) {
        Double held = same.size() < HELD_READINGS
                ? null
                : Double.valueOf(Samples.median(
                        same.stream().skip(1).mapToDouble(SweepPoint::amps).toArray()));
        return new Stop(
                same.get(0).pulseSeconds(),
                same.get(0).amps(),
                held,
                same.get(same.size() - 1).angleRadians());
    }
}
