package fettle.planner.timer;

import fettle.engine.pack.power.ProfilePart;
import fettle.engine.trace.Trace;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A logged current in few parts: slots of equal time, each a calm part and, at its end, the slot's hardest second. The bursts
 * are kept because they, not the mean, bring the weakest cell to its under-load minimum.
 *
 * <p>The net charge is that of the log. What flows back while braking is taken off the calm parts, since a part draws or
 * pauses.
 *
 * @param netCoulombs charge taken less charge that flowed back [C]
 * @param parts the parts, in order
 */
record BurstProfile(double netCoulombs, List<ProfilePart> parts) {
    private static final int MOST_SLOTS = 100;
    private static final double BURST_SECONDS = 1;
    private static final double SHORTEST_SLOT_SECONDS = 4 * BURST_SECONDS;

    static BurstProfile of(Trace trace) {
        double[] passed = passed(trace);
        int slots =
                (int) Math.max(1, Math.min(MOST_SLOTS, Math.floor(trace.durationSeconds() / SHORTEST_SLOT_SECONDS)));
        double length = trace.durationSeconds() / slots;
        double burstSeconds = Math.min(BURST_SECONDS, length / 2);
        double[] bursts = new double[slots];
        double[] calm = new double[slots];
        double net = passed[passed.length - 1];
        double burst = 0;
        double clipped = 0;
        for (int slot = 0; slot < slots; slot++) {
            double from = trace.timeSeconds()[0] + slot * length;
            bursts[slot] = hardest(trace, passed, from, from + length, burstSeconds);
            double whole = at(trace, passed, from + length) - at(trace, passed, from);
            calm[slot] = Math.max(0, whole - bursts[slot]);
            burst += bursts[slot];
            clipped += calm[slot];
        }
        double factor = clipped > 0 ? Math.max(0, net - burst) / clipped : 0;
        List<ProfilePart> parts = new ArrayList<>();
        for (int slot = 0; slot < slots; slot++) {
            parts.add(new ProfilePart(factor * calm[slot] / (length - burstSeconds), length - burstSeconds));
            parts.add(new ProfilePart(bursts[slot] / burstSeconds, burstSeconds));
        }
        return new BurstProfile(net, parts);
    }

    /** Charge passed until each sample [C]. */
    private static double[] passed(Trace trace) {
        double[] time = trace.timeSeconds();
        double[] passed = new double[time.length];
        for (int i = 1; i < time.length; i++) {
            passed[i] = passed[i - 1]
                    + 0.5 * (trace.currentAmps()[i - 1] + trace.currentAmps()[i]) * (time[i] - time[i - 1]);
        }
        return passed;
    }

    /** Most charge any window of a slot takes [C], ≥ 0; windows begin at samples. */
    private static double hardest(Trace trace, double[] passed, double from, double to, double window) {
        double most = at(trace, passed, from + window) - at(trace, passed, from);
        for (int i = row(trace, from); i < trace.size() && trace.timeSeconds()[i] + window <= to; i++) {
            most = Math.max(most, at(trace, passed, trace.timeSeconds()[i] + window) - passed[i]);
        }
        return Math.max(0, most);
    }

    /** Charge passed until a time, straight between samples [C]. */
    private static double at(Trace trace, double[] passed, double seconds) {
        int row = row(trace, seconds);
        if (row == 0) {
            return 0;
        }
        if (row == trace.size()) {
            return passed[row - 1];
        }
        double[] time = trace.timeSeconds();
        double share = (seconds - time[row - 1]) / (time[row] - time[row - 1]);
        return passed[row - 1] + share * (passed[row] - passed[row - 1]);
    }

    /** The first sample at or after a time; the number of samples if there is none. */
    private static int row(Trace trace, double seconds) {
        int found = Arrays.binarySearch(trace.timeSeconds(), seconds);
        return found >= 0 ? found : -found - 1;
    }
}
