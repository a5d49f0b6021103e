package fettle.engine.control.sweep;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Readings that stand out from the ones on both sides of them, so that a rise is never one. */
final class SpikeSearch {
    /** Least height in standard deviations of a reading: one false spike in about ten thousand readings. */
    private static final double NOISES = 5;

    /** Least height worth a word [A]. */
    private static final double LEAST = 0.04;

    private static final int NEIGHBOURS = 3;

    /** Spikes of different passes within this many steps are one place. */
    private static final double SAME_PLACE_STEPS = 1.6;

    private SpikeSearch() {}

    /** Heights above the neighbours on either side [A]; 0 for readings that do not stand out. */
    static double[] heights(Samples pass, double noise) {
        double[] heights = new double[pass.size()];
        double least = Math.max(LEAST, NOISES * noise);
        for (int at = 2; at < pass.size() - 2; at++) {
            double before = Samples.median(Arrays.copyOfRange(pass.amps(), Math.max(0, at - NEIGHBOURS), at));
            double after =
                    Samples.median(Arrays.copyOfRange(pass.amps(), at + 1, Math.min(pass.size(), at + 1 + NEIGHBOURS)));
            double above = pass.amps()[at] - Math.max(before, after);
            double below = Math.min(before, after) - pass.amps()[at];
            heights[at] = above > least ? above : below > least ? -below : 0;
        }
        return heights;
    }

    /** The pass without the readings that stand out. */
    static Samples without(Samples pass, double[] heights) {
        List<Samples.Sample> kept = new ArrayList<>();
        for (int at = 0; at < pass.size(); at++) {
            if (heights[at] == 0) {
                kept.add(new Samples.Sample(pass.pulses()[at], pass.amps()[at]));
            }
        }
        return Samples.of(kept);
    }

    /** The places where readings stand out, the lowest pulse first. */
    static List<Spike> places(List<Samples> passes, double noise) {
        List<Seen> seen = new ArrayList<>();
        for (int pass = 0; pass < passes.size(); pass++) {
            double[] heights = heights(passes.get(pass), noise);
            for (int at = 0; at < heights.length; at++) {
                if (heights[at] != 0) {
                    seen.add(new Seen(passes.get(pass).pulses()[at], heights[at], pass));
                }
            }
        }
        seen.sort(Comparator.comparingDouble(Seen::pulse));
        return together(
                seen, SAME_PLACE_STEPS * (passes.isEmpty() ? 0 : passes.get(0).stepSeconds()));
    }

    private static List<Spike> together(List<Seen> rising, double apart) {
        List<Spike> spikes = new ArrayList<>();
        int start = 0;
        for (int at = 1; at <= rising.size(); at++) {
            if (at == rising.size()
                    || rising.get(at).pulse() - rising.get(at - 1).pulse() > apart) {
                spikes.add(spike(rising.subList(start, at)));
                start = at;
            }
        }
        return List.copyOf(spikes);
    }

    private static Spike spike(List<Seen> place) {
        Seen highest = place.stream()
                .max(Comparator.comparingDouble(seen -> Math.abs(seen.amps())))
                .orElseThrow();
        int passes = (int) place.stream().mapToInt(Seen::pass).distinct().count();
        return new Spike(highest.pulse(), highest.amps(), passes);
    }

    private record Seen(double pulse, double amps, int pass) {}
}
