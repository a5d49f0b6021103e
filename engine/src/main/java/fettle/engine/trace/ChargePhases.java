package fettle.engine.trace;

import java.util.Arrays;
import java.util.List;

/**
 * Parts a charge where the charger stops holding the current and begins to hold the voltage.
 *
 * <p>The voltage held is the median after the last sample at nine tenths of the charge's highest current or more. It is held from
 * the first sample after which the pack never lies more than 0.15 % below it. Checked against measured charges in {@code
 * SegmentationAgainstOpenDataTest}.
 */
final class ChargePhases {
    private static final double BAND = 0.0015;
    private static final double FALL = 0.9;
    private static final int FEWEST_SAMPLES = 3;

    private ChargePhases() {}

    static void split(Trace trace, Segment segment, List<Segment> into) {
        int start = segment.kind().isCharge() && trace.hasVolts() ? constantVoltageFrom(trace, segment) : segment.to();
        if (start >= segment.to()) {
            into.add(segment);
            return;
        }
        if (start > segment.from()) {
            into.add(new Segment(SegmentKind.CHARGE_CONSTANT_CURRENT, segment.from(), start));
        }
        into.add(new Segment(SegmentKind.CHARGE_CONSTANT_VOLTAGE, start, segment.to()));
    }

    /** First sample of the constant-voltage part; the segment's end if there is none. */
    private static int constantVoltageFrom(Trace trace, Segment segment) {
        double[] tapering = taperingVolts(trace, segment);
        if (tapering.length < FEWEST_SAMPLES) {
            return segment.to();
        }
        double least = median(tapering) * (1 - BAND);
        int start = segment.to();
        while (start > segment.from() && trace.packVolts()[start - 1] >= least) {
            start--;
        }
        return segment.to() - start >= FEWEST_SAMPLES ? start : segment.to();
    }

    /** Volts of the samples after the last at full current. */
    private static double[] taperingVolts(Trace trace, Segment segment) {
        double[] amps = Arrays.copyOfRange(trace.currentAmps(), segment.from(), segment.to());
        double full = -FALL * Arrays.stream(amps).map(Math::abs).max().orElse(0);
        int last = segment.to() - 1;
        while (last >= segment.from() && trace.currentAmps()[last] > full) {
            last--;
        }
        return Arrays.copyOfRange(trace.packVolts(), last + 1, segment.to());
    }

    private static double median(double[] values) {
        Arrays.sort(values);
        return values[values.length / 2];
    }
}
