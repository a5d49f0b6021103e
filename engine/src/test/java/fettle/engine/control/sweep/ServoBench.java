package fettle.engine.control.sweep;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A servo on an imagined bench, to make sweeps whose truth is known. It does not share the estimator's straight lines: the
 * servo is a stiff position loop with a stall limit that pushes its arm against friction, a spring load and stops that
 * yield by a power law; the current follows the torque. Binding begins where the arm first touches a stop.
 *
 * @param stepMicros pulse from reading to reading
 * @param noiseAmps standard deviation of a reading
 * @param lowContact pulse at which the lower stop is touched [µs]; below the sweep if the side is free
 * @param highContact pulse at which the upper stop is touched [µs]
 * @param loopAmpsPerMicro current per µs that the arm lags behind its pulse
 * @param stopAmpsPerMicro stiffness of the stops, in current per µs of yield to the power
 * @param power power law of the stops: 1 a spring, 1.5 two rounded bodies (Hertz)
 * @param stallAmps most current the servo takes
 * @param frictionAmps running friction
 * @param rippleAmps amplitude of the friction's change along the gears
 * @param rippleMicros its length
 * @param springAmpsPerMicro load that grows with the deflection from springCentre
 * @param springCentre where the load is least [µs]
 * @param wildShare share of readings that are off by ten times the noise
 */
record ServoBench(
        double stepMicros,
        double noiseAmps,
        double lowContact,
        double highContact,
        double loopAmpsPerMicro,
        double stopAmpsPerMicro,
        double power,
        double stallAmps,
        double frictionAmps,
        double rippleAmps,
        double rippleMicros,
        double springAmpsPerMicro,
        double springCentre,
        double wildShare) {
    List<SweepPoint> sweep(double fromMicros, double toMicros, Random random) {
        List<SweepPoint> points = new ArrayList<>();
        int steps = (int) Math.round(Math.abs(toMicros - fromMicros) / stepMicros);
        double way = Math.signum(toMicros - fromMicros);
        double phase = random.nextDouble() * 2 * Math.PI;
        for (int step = 0; step <= steps; step++) {
            double pulse = fromMicros + way * step * stepMicros;
            double off = noiseAmps * random.nextGaussian() * (random.nextDouble() < wildShare ? 10 : 1);
            points.add(new SweepPoint(pulse * 1e-6, Math.max(0, amps(pulse, phase) + off)));
        }
        return points;
    }

    private double amps(double pulse, double phase) {
        double friction = frictionAmps + rippleAmps * Math.sin(2 * Math.PI * pulse / rippleMicros + phase);
        double load = springAmpsPerMicro * Math.abs(pulse - springCentre);
        double overlap = Math.max(lowContact - pulse, pulse - highContact);
        return Math.min(stallAmps, friction + load + (overlap > 0 ? against(overlap) : 0));
    }

    /** Current at which loop and stop agree: loop · (overlap − yield) = stop · yield^power. */
    private double against(double overlap) {
        double none = 0;
        double all = overlap;
        for (int halving = 0; halving < 50; halving++) {
            double yield = (none + all) / 2;
            if (loopAmpsPerMicro * (overlap - yield) > stopAmpsPerMicro * Math.pow(yield, power)) {
                none = yield;
            } else {
                all = yield;
            }
        }
        return loopAmpsPerMicro * (overlap - none);
    }
}
