package fettle.engine.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

final class TraceRecorderTest {
    private static final TraceRecorder.Origin ORIGIN =
            new TraceRecorder.Origin("flight.csv", "00", 1, "{}", List.of("read"), "");

    @Test
    void countsTheSameInPartsAsInOne() {
        Trace whole =
                MeasuredTraces.read("battery/pouch-33ah-pulses/cycles_1C.csv", MeasuredTraces.Sign.DISCHARGE_NEGATIVE);
        TraceLimits limits = new TraceLimits(1, 2.5, 4.2, 40.0, 20.0, 333.15, 273.15, 318.15);
        TraceRecorder one = new TraceRecorder(limits, "P01", TraceRecorder.Swaps.ASK);
        one.add(whole);
        TraceRecorder parts = new TraceRecorder(limits, "P01", TraceRecorder.Swaps.ASK);
        parts.add(whole.part(0, 700));
        parts.add(whole.part(700, 1500));
        parts.add(whole.part(1500, whole.size()));
        TraceRecord expected = one.finish(ORIGIN);
        TraceRecord found = parts.finish(ORIGIN);
        assertThat(found.total().outCoulombs()).isCloseTo(expected.total().outCoulombs(), within(1e-6));
        assertThat(found.total().inJoules()).isCloseTo(expected.total().inJoules(), within(1e-3));
        assertThat(found.samples()).isEqualTo(whole.size());
        assertThat(found.durationSeconds()).isEqualTo(expected.durationSeconds());
        assertThat(found.segments())
                .filteredOn(segment -> segment.kind() == SegmentKind.RUN)
                .hasSameSizeAs(expected.segments().stream()
                        .filter(segment -> segment.kind() == SegmentKind.RUN)
                        .toList());
        assertThat(expected.remarks()).startsWith("read").anyMatch(remark -> remark.startsWith("no temperature"));
    }
}
