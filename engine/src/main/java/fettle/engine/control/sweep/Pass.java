package fettle.engine.control.sweep;

import java.util.ArrayList;
import java.util.Collections;
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

    /** The passes of a sweep, split where its direction turns; shorter than three pulses is no pass. */
    static List<Pass> of(Sweep sweep) {
        List<Stop> stops = stops(sweep.points());
        List<Pass> passes = new ArrayList<>();
        int start = 0;
        for (int at = 2; at <= stops.size(); at++) {
            if (at == stops.size() || turns(stops, at)) {
                add(passes, stops.subList(start, at));
                start = at - 1;
            }
        }
        return passes;
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

    private static boolean turns(List<Stop> stops, int at) {
        double before = stops.get(at - 1).pulseSeconds() - stops.get(at - 2).pulseSeconds();
        double after = stops.get(at).pulseSeconds() - stops.get(at - 1).pulseSeconds();
        return before * after < 0;
    }

    private static void add(List<Pass> passes, List<Stop> stops) {
        if (stops.size() < 3) {
            return;
        }
        List<Stop> rising = new ArrayList<>(stops);
        boolean falling = stops.get(1).pulseSeconds() < stops.get(0).pulseSeconds();
        if (falling) {
            Collections.reverse(rising);
        }
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
