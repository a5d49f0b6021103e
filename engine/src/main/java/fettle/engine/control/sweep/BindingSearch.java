package fettle.engine.control.sweep;

import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Where the current begins to rise on one side. */
final class BindingSearch {
    /** Least rise of current that is called binding [A]. */
    private static final double LEAST_RISE = 0.06;

    /** Least rise in standard deviations of one reading. */
    private static final double LEAST_RISE_NOISES = 4;

    /** Least slope beyond the bend [A/s]: 1 mA/µs; springs, hinge tape and air loads rise more gently. */
    private static final double LEAST_SLOPE = 1000;

    /** Share of the side within which a rise that begins there is load, unless it is steep. */
    private static final double NEAR_THE_MIDDLE = 0.25;

    /** Least slope of binding that begins there [A/s]: 4 mA/µs; hinges, seals and springs seldom load that steeply. */
    private static final double STEEP_NEAR_THE_MIDDLE = 4000;

    /** How much steeper than the load before it. */
    private static final double STEEPER = 2;

    /** Squares the bend must take off, over the noise's variance: about five and a half standard deviations. */
    private static final double LEAST_GAIN = 30;

    /** Squares by which a parabola must be worse, over the noise's variance. */
    private static final double LEAST_OVER_PARABOLA = 9;

    /** Share of the rise beyond which the current may flatten towards stall. */
    private static final double BELOW_STALL = 0.7;

    /** How far a stop that yields softly moves the bend outwards [s]; from the generated sweeps of docs/accuracy.md. */
    private static final double SOFT_STOP = TradeUnit.MICROSECOND.toSi(2.5);

    /** A place within one step cannot be told from the readings alone: standard deviation of an even spread. */
    private static final double WITHIN_STEP = 1 / Math.sqrt(12) / 2;

    private static final int FEWEST = 8;
    private static final int FEWEST_ON_THE_RISE = 4;

    private BindingSearch() {}

    /** Binding, if there is any, on samples that run outwards from the free middle. */
    static Optional<Binding> outwards(Samples side, double noise) {
        if (side.size() < FEWEST) {
            return Optional.empty();
        }
        BrokenStick stick = withoutStall(side, noise, BrokenStick.fit(side, noise));
        double rise = stick.slopeChange() * (side.pulses()[side.size() - 1] - stick.bendSeconds());
        double slope = stick.slopeBefore() + stick.slopeChange();
        boolean binds = rise >= Math.max(LEAST_RISE, LEAST_RISE_NOISES * noise)
                && slope >= leastSlope(side, stick)
                && stick.slopeChange() >= STEEPER * Math.abs(stick.slopeBefore())
                && stick.gain() >= LEAST_GAIN
                && stick.overParabola() >= LEAST_OVER_PARABOLA;
        return binds ? Optional.of(new Binding(place(side, stick), slope, seenRise(side))) : Optional.empty();
    }

    private static double leastSlope(Samples side, BrokenStick stick) {
        double middle = side.pulses()[0];
        double length = side.pulses()[side.size() - 1] - middle;
        return stick.bendSeconds() - middle < NEAR_THE_MIDDLE * length ? STEEP_NEAR_THE_MIDDLE : LEAST_SLOPE;
    }

    private static Estimate place(Samples side, BrokenStick stick) {
        return Estimate.ofIndependent(
                stick.bendSeconds(),
                List.of(
                        new Driver(
                                "scatter of the readings",
                                stick.standardDeviation() * Math.max(1, Math.sqrt(stick.remaining()))),
                        new Driver("how softly the stop yields", SOFT_STOP),
                        new Driver("step between readings", side.stepSeconds() * WITHIN_STEP)));
    }

    private static double seenRise(Samples side) {
        double[] smooth = side.smoothed(3);
        return Arrays.stream(smooth).max().orElseThrow() - base(smooth);
    }

    private static double base(double[] smooth) {
        return Samples.median(Arrays.copyOf(smooth, Math.max(3, smooth.length / 3)));
    }

    /** The fit to the lower part of the rise, if there is enough of it. */
    private static BrokenStick withoutStall(Samples side, double noise, BrokenStick whole) {
        double[] smooth = side.smoothed(3);
        double base = base(smooth);
        double ceiling = base + BELOW_STALL * (Arrays.stream(smooth).max().orElseThrow() - base);
        int end = 0;
        while (end < smooth.length && smooth[end] <= ceiling) {
            end++;
        }
        end = Math.min(end + 1, smooth.length);
        if (end < FEWEST) {
            return whole;
        }
        Samples lower = side.range(0, end);
        BrokenStick fit = BrokenStick.fit(lower, noise);
        long rising = Arrays.stream(lower.pulses())
                .filter(pulse -> pulse > fit.bendSeconds())
                .count();
        return rising >= FEWEST_ON_THE_RISE ? fit : whole;
    }
}
