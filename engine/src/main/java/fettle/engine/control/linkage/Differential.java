package fettle.engine.control.linkage;

import java.util.Locale;

/** Unequal throws either side of neutral. */
final class Differential {
    private Differential() {}

    /** Larger over smaller throw, ≥ 1; infinite if one side does not move. */
    static double of(double oneRadians, double otherRadians) {
        double one = Math.abs(oneRadians);
        double other = Math.abs(otherRadians);
        return one == other ? 1 : Math.max(one, other) / Math.min(one, other);
    }

    static String figure(double ratio) {
        return String.format(Locale.ROOT, "%.3f", ratio);
    }
}
