package fettle.engine.control.sweep;

import fettle.engine.control.Remark;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What the figures of a sweep mean and what to do about them. */
final class SweepRemarks {
    /** Ends whose excess differs by this factor are loaded unequally; Fettle's choice. */
    private static final double UNEQUAL = 1.5;

    /** Least difference of the ends worth a word [A]. */
    private static final double LEAST_DIFFERENCE = 0.1;

    private static final double NOISES = 4;

    /** Scatter worth a word: share of the running current, and least [A]. */
    private static final double NOISY_SHARE = 0.25;

    private static final double NOISY_LEAST = 0.05;

    private SweepRemarks() {}

    static SweepResult added(SweepResult bare, Sweep sweep, List<Pass> passes) {
        List<Remark> remarks = new ArrayList<>();
        binds("low", bare.low(), bare.span().lowestSeconds(), remarks);
        binds("high", bare.high(), bare.span().highestSeconds(), remarks);
        nearBinding(bare, sweep, remarks);
        unequal(bare, remarks);
        spikes(bare, passes.size(), remarks);
        bare.hotSpots().forEach(spot -> remarks.add(hot(spot)));
        notShown(bare, passes, remarks);
        return new SweepResult(
                bare.idleAmps(),
                bare.runningAmps(),
                bare.frictionAmps(),
                bare.noiseAmps(),
                bare.low(),
                bare.high(),
                bare.span(),
                bare.leastLoadSeconds(),
                bare.ends(),
                bare.spikes(),
                bare.hotSpots(),
                bare.angles(),
                remarks,
                bare.working(),
                bare.cautions());
    }

    private static void binds(String side, @Nullable Binding binding, double endSeconds, List<Remark> remarks) {
        if (binding != null) {
            remarks.add(new Remark(
                    "binds-" + side,
                    "binding begins at " + TradeUnit.MICROSECOND.print(binding.pulseSeconds(), 0)
                            + "; the current rises by " + amps(binding.riseAmps()) + " beyond it",
                    "Set this end point to " + micros(endSeconds) + " or free the linkage."));
        }
    }

    private static void nearBinding(SweepResult bare, Sweep sweep, List<Remark> remarks) {
        EndLoads ends = bare.ends();
        NearStall limit = NearStall.of(ends.centreAmps(), sweep.stallAmps());
        if (ends.largestAmps() >= limit.amps()) {
            boolean high = ends.highAmps() >= ends.lowAmps();
            remarks.add(new Remark(
                    "near-stall",
                    "at the " + (high ? "long" : "short") + " end the servo takes " + amps(ends.largestAmps())
                            + ", more than " + limit.why() + ": near binding",
                    "Bring that end point in before use; held there the servo heats and may starve the receiver."));
        }
    }

    private static void unequal(SweepResult bare, List<Remark> remarks) {
        double low = bare.ends().lowExcessAmps();
        double high = bare.ends().highExcessAmps();
        double difference = Math.abs(high - low);
        if (difference >= Math.max(LEAST_DIFFERENCE, NOISES * bare.noiseAmps())
                && Math.max(low, high) >= UNEQUAL * Math.min(low, high)) {
            remarks.add(new Remark(
                    "unequal-load",
                    "the ends take " + amps(bare.ends().lowAmps()) + " and "
                            + amps(bare.ends().highAmps()) + ": loaded unequally",
                    "Look for a hinge, a seal or a rod that fouls on the heavier side, and check the centre."));
        }
    }

    private static void spikes(SweepResult bare, int passes, List<Remark> remarks) {
        for (Spike spike : bare.spikes()) {
            String seen = "at " + micros(spike.pulseSeconds()) + " the current jumps by " + amps(spike.amps());
            remarks.add(
                    spike.passes() > 1
                            ? new Remark(
                                    "worn-track",
                                    seen + ", in " + spike.passes() + " of " + passes + " passes: a worn track or gear",
                                    "Replace the servo or its gears before use.")
                            : new Remark(
                                    "single-spike",
                                    seen + ", seen once",
                                    "Sweep again, both ways; if it comes back at the same place the track is worn."));
        }
    }

    private static Remark hot(HotSpot spot) {
        return new Remark(
                "hot-spot",
                "from " + micros(spot.lowestSeconds()) + " to " + micros(spot.highestSeconds()) + " it takes "
                        + amps(spot.riseAmps()) + " more than around it",
                "Move the surface by hand there with the rod off; look for a tight hinge, a bent rod or rough gears.");
    }

    private static void notShown(SweepResult bare, List<Pass> passes, List<Remark> remarks) {
        if (bare.noiseAmps()
                > Math.max(NOISY_LEAST, NOISY_SHARE * bare.runningAmps().value())) {
            remarks.add(new Remark(
                    "noisy",
                    "readings scatter by " + amps(bare.noiseAmps()),
                    "Wait at each step, or sweep several times; the ± of every figure grows with it."));
        }
        if (bare.low() == null || bare.high() == null) {
            String side = bare.low() == null && bare.high() == null
                    ? "either end"
                    : bare.low() == null ? "the short end" : "the long end";
            remarks.add(new Remark(
                    "not-bound",
                    "nothing bound at " + side + " within the sweep; nothing is known beyond it",
                    "Keep the end point inside what was swept."));
        }
        if (bare.angles() == null
                && passes.stream().map(Pass::direction).distinct().count() < 2) {
            remarks.add(new Remark(
                    "one-way",
                    "only one direction was swept, so hysteresis and dead band are not known",
                    "Sweep both ways and note the angle."));
        }
    }

    private static String amps(double amps) {
        return String.format(Locale.ROOT, "%.2f A", amps);
    }

    private static String micros(double seconds) {
        return TradeUnit.MICROSECOND.print(seconds, 0);
    }
}
