package fettle.engine.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/** Samples {@code from} (inclusive) to {@code to} (exclusive) during which something held. */
record Stretch(int from, int to) {
    /**
     * The stretches in which a condition holds, interruptions shorter than {@code bridgeSeconds} included.
     *
     * @param time time of each sample [s], rising
     */
    static List<Stretch> where(double[] time, double bridgeSeconds, IntPredicate holds) {
        List<Stretch> found = new ArrayList<>();
        int from = -1;
        int last = -1;
        for (int i = 0; i < time.length; i++) {
            if (!holds.test(i)) {
                continue;
            }
            if (from >= 0 && last < i - 1 && time[i] - time[last] > bridgeSeconds) {
                found.add(new Stretch(from, last + 1));
                from = -1;
            }
            from = from < 0 ? i : from;
            last = i;
        }
        if (from >= 0) {
            found.add(new Stretch(from, last + 1));
        }
        return found;
    }
}
