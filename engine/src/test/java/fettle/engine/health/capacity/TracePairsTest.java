package fettle.engine.health.capacity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.cell.Chemistry;
import fettle.engine.cell.DefaultCurves;
import fettle.engine.cell.RestCurve;
import fettle.engine.pack.MeterAccuracy;
import fettle.engine.pack.Pack;
import fettle.engine.pack.Packs;
import fettle.engine.trace.Count;
import fettle.engine.trace.SegmentRecord;
import fettle.engine.trace.TraceRecord;
import fettle.engine.trace.TraceRecords;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

final class TracePairsTest {
    private static final Instant DAY = Instant.parse("2026-05-02T10:00:00Z");
    private static final RestCurve CURVE = DefaultCurves.of(Chemistry.LIPO);
    private static final Pack PACK = Packs.lipo(4, 5000);

    private static List<CapacityPair> pairs(TraceRecord trace, @Nullable Integer cell) {
        return TracePairs.of(List.of(trace), PACK, CURVE, MeterAccuracy.USUAL, cell);
    }

    private static TraceRecord run(double coulombs, double from, double to) {
        return TraceRecords.run(DAY, coulombs, CURVE.volts(from), CURVE.volts(to));
    }

    @Test
    void aRunBetweenTwoRestsTellsTheCapacityOfPackAndCell() {
        List<CapacityPair> pack = pairs(run(0.6 * 14_400, 0.95, 0.35), null);
        assertThat(pack).singleElement().satisfies(pair -> {
            assertThat(pair.coulombs() / pair.changeFraction()).isCloseTo(14_400, within(30.0));
            assertThat(pair.changeFraction()).isNegative();
            assertThat(pair.at()).isEqualTo(DAY.plusSeconds(8100));
            assertThat(pair.how()).contains("2400 mAh counted out from 95 % to 35 %", "flight.csv");
        });
        assertThat(pairs(run(0.6 * 14_400, 0.95, 0.35), 3)).hasSize(1);
        assertThat(pairs(run(0.6 * 14_400, 0.95, 0.35), 5)).isEmpty();
    }

    @Test
    void manyRunsOfAFadedPackBringItsCapacityBelowTheLabel() {
        List<TraceRecord> traces = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            traces.add(TraceRecords.run(
                    DAY.plusSeconds(90_000L * i), 0.55 * 13_000, CURVE.volts(0.92), CURVE.volts(0.37)));
        }
        CapacityReport report = CapacityEstimator.of(
                TracePairs.of(traces, PACK, CURVE, MeterAccuracy.USUAL, null), CapacityPrior.ofLabel(PACK));
        assertThat(report.influences()).hasSize(8);
        assertThat(report.lowCoulombs()).isLessThan(13_000);
        assertThat(report.highCoulombs()).isGreaterThan(13_000);
        assertThat(report.capacity().value()).isLessThan(15_500);
    }

    @Test
    void saysNothingWithoutADateOrWhereTheLoggerDidNotSee() {
        TraceRecord undated = TraceRecords.run(null, 8000, CURVE.volts(0.95), CURVE.volts(0.35));
        assertThat(pairs(undated, null)).isEmpty();
        TraceRecord seen = run(8000, 0.95, 0.35);
        List<SegmentRecord> blind = seen.segments().stream()
                .map(segment -> new SegmentRecord(
                        segment.kind(),
                        segment.fromSeconds(),
                        segment.toSeconds(),
                        segment.count().plus(new Count(0, 0, 0, 0, 0, 200))))
                .toList();
        assertThat(pairs(TraceRecords.record(DAY, blind, seen.rests(), List.of()), null))
                .isEmpty();
        assertThat(pairs(run(8000, 0.95, 0.85), null)).as("too small a change").isEmpty();
        assertThat(pairs(run(8000, 0.35, 0.95), null)).as("the wrong way").isEmpty();
    }
}
