package fettle.engine.trace;

/**
 * A segment as the record keeps it.
 *
 * @param kind what the pack did
 * @param fromSeconds its first sample, on the trace's clock [s]
 * @param toSeconds its last sample [s]
 * @param count what passed; {@link Count#NOTHING} if no current was logged
 */
public record SegmentRecord(SegmentKind kind, double fromSeconds, double toSeconds, Count count) {
    public double durationSeconds() {
        return toSeconds - fromSeconds;
    }
}
