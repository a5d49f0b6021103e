package fettle.engine.control.sweep;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Current from which on a servo is taken as near binding.
 *
 * @param amps the limit [A]
 * @param why what it is, in words
 */
record NearStall(double amps, String why) {
    /** Times the current in the middle; after common practice, no source: 0.58 A over 0.2 A is load, 1.16 A is not. */
    private static final double TIMES_MIDDLE = 3.5;

    /** Share of stall current; Fettle's choice. */
    private static final double SHARE_OF_STALL = 0.5;

    /** Least rise over the middle that counts [A]. */
    private static final double LEAST_RISE = 0.1;

    static NearStall of(double centreAmps, @Nullable Double stallAmps) {
        double byMiddle = Math.max(TIMES_MIDDLE * centreAmps, centreAmps + LEAST_RISE);
        if (stallAmps != null && SHARE_OF_STALL * stallAmps < byMiddle) {
            return new NearStall(
                    SHARE_OF_STALL * stallAmps,
                    String.format(Locale.ROOT, "half its stall current of %.2f A", stallAmps));
        }
        return new NearStall(
                byMiddle, String.format(Locale.ROOT, "%.1f times the %.2f A in the middle", TIMES_MIDDLE, centreAmps));
    }
}
