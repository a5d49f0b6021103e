package fettle.engine.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.PackHistory;
import fettle.engine.pack.Packs;
import fettle.engine.pack.Run;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

final class TraceUsesTest {
    private static final Instant DAY = Instant.parse("2026-05-02T10:00:00Z");
    private static final PackHistory EMPTY = new PackHistory(Packs.lipo(4, 5000), List.of(), List.of(), List.of());

    @Test
    void aLoggedRunIsARunOfTheRecordWithWhatRemained() {
        PackHistory joined = TraceUses.joined(EMPTY, List.of(TraceRecords.run(DAY, 9000, 4.1, 3.8)));
        assertThat(joined.charges()).isEmpty();
        assertThat(joined.runs()).singleElement().satisfies(run -> {
            assertThat(run.endedAt()).isEqualTo(DAY.plusSeconds(4500));
            assertThat(run.durationSeconds()).isEqualTo(900);
            assertThat(run.remainingPackVolts()).isCloseTo(4 * 3.8, within(1e-9));
        });
    }

    @Test
    void aLoggedChargeIsAChargeWithItsPutBack() {
        Count in = new Count(0, 7200, 0, 1, 3600, 0);
        TraceRecord trace = TraceRecords.record(
                DAY,
                List.of(
                        new SegmentRecord(SegmentKind.CHARGE_CONSTANT_CURRENT, 0, 3000, in),
                        new SegmentRecord(SegmentKind.CHARGE_CONSTANT_VOLTAGE, 3000, 3600, in)),
                List.of(),
                List.of());
        assertThat(TraceUses.joined(EMPTY, List.of(trace)).charges())
                .containsExactly(new ChargeRecord(DAY.plusSeconds(3600), 14400.0, null, null, "from a trace"));
    }

    @Test
    void aUseThatWasNotedIsNotToldTwice() {
        Run noted = new Run(DAY.plusSeconds(5000), "Harrier", 900, 0.3, null, null, "");
        PackHistory history = new PackHistory(EMPTY.pack(), List.of(), List.of(), List.of(noted));
        TraceRecord trace = TraceRecords.run(DAY, 9000, 4.1, 3.8);
        assertThat(TraceUses.joined(history, List.of(trace)).runs()).containsExactly(noted);
        TraceRecord later = TraceRecords.run(DAY.plusSeconds(20_000), 9000, 4.1, 3.8);
        assertThat(TraceUses.joined(history, List.of(later)).runs()).hasSize(2);
    }

    @Test
    void aTraceWithoutADateHasNoPlace() {
        assertThat(TraceUses.joined(EMPTY, List.of(TraceRecords.run(null, 9000, 4.1, 3.8)))
                        .runs())
                .isEmpty();
    }
}
