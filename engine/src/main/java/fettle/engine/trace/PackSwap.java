package fettle.engine.trace;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Where a trace seems to go on with another pack: its volts at rest rise across a gap with no charge seen.
 *
 * @param sample first sample after it
 * @param atSeconds when, on the trace's clock [s]
 * @param beforeVolts pack volts before [V]
 * @param afterVolts pack volts after [V]
 */
record PackSwap(int sample, double atSeconds, double beforeVolts, double afterVolts) {
    private static final double RISE_SHARE = 0.05; // more than a pack recovers after a load. Common practice, no source

    static Optional<PackSwap> first(Trace trace, List<Segment> segments) {
        if (!trace.hasVolts()) {
            return Optional.empty();
        }
        double gapSeconds = Gaps.limitSeconds(trace);
        for (int i = 1; i < segments.size(); i++) {
            Segment before = segments.get(i - 1);
            Segment after = segments.get(i);
            if (before.kind().isCharge() || after.kind().isLoaded()) {
                continue;
            }
            double last = trace.packVolts()[before.to() - 1];
            double first = trace.packVolts()[after.from()];
            double at = trace.timeSeconds()[after.from()];
            boolean gap = at - trace.timeSeconds()[before.to() - 1] > gapSeconds;
            if (gap && first > last * (1 + RISE_SHARE)) {
                return Optional.of(new PackSwap(after.from(), at, last, first));
            }
        }
        return Optional.empty();
    }

    /** What it looks like, in words. */
    String sentence() {
        return String.format(
                Locale.ROOT,
                "volts at rest rise from %.2f to %.2f V across the gap at %.0f s with no charge seen: another pack, or a"
                        + " charge that was not logged",
                beforeVolts,
                afterVolts,
                atSeconds);
    }
}
