package fettle.engine.trace;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.engine.pack.Finding;
import fettle.engine.pack.Standing;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

final class EventFindingsTest {
    private static final Instant DAY = Instant.parse("2026-05-02T10:00:00Z");

    private static TraceRecord with(TraceEvent... events) {
        return TraceRecords.record(DAY, List.of(), List.of(), List.of(events));
    }

    @Test
    void tellsTheWorstOfAKindWithTimeValueAndTrace() {
        List<Finding> findings = EventFindings.of(
                List.of(
                        with(TraceRecords.event(EventKind.UNDER_VOLTAGE, 2, 2.9, 3.0)),
                        with(TraceRecords.event(EventKind.UNDER_VOLTAGE, 3, 2.7, 3.0))),
                List.of(4L, 9L));
        assertThat(findings).singleElement().satisfies(finding -> {
            assertThat(finding.id()).isEqualTo("trace-under-voltage");
            assertThat(finding.standing()).isEqualTo(Standing.LIMITED);
            assertThat(finding.statement())
                    .isEqualTo(
                            "cell 3 below its lowest volts under load for 2.0 s: 2.700 V, limit 3.000 V on 2026-05-02"
                                    + " (trace 9); 2 times in all");
            assertThat(finding.advice()).endsWith("trace acknowledge 9.");
        });
    }

    @Test
    void whatWasLookedIntoNoLongerCounts() {
        TraceRecord bad = with(TraceRecords.event(EventKind.CELL_COLLAPSE, 2, 2.9, 3.6));
        assertThat(EventFindings.of(List.of(bad), List.of(1L)))
                .extracting(Finding::standing)
                .containsExactly(Standing.GROUNDED);
        assertThat(EventFindings.of(List.of(bad.acknowledgedAs("rested well")), List.of(1L)))
                .isEmpty();
    }

    @ParameterizedTest
    @EnumSource(EventKind.class)
    void noEventLeavesAPackReady(EventKind kind) {
        assertThat(EventFindings.of(List.of(with(TraceRecords.event(kind, 1, 2, 1))), List.of(1L)))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.standing()).isGreaterThan(Standing.READY);
                    assertThat(finding.advice()).isNotBlank();
                    assertThat(finding.working().steps()).hasSize(1);
                });
    }
}
