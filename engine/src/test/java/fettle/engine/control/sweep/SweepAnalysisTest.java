package fettle.engine.control.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.control.Remark;
import fettle.engine.units.InputException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SweepAnalysisTest {
    private static final double MICRO = 1e-6;

    @Test
    void endPointsStayInsideBothBindings() {
        SweepResult result = SweepAnalysis.of(Sweep.of(sweep(900, 2100, binding(1050, 1900))));

        assertThat(result.low().pulseSeconds().value()).isCloseTo(1050 * MICRO, within(6 * MICRO));
        assertThat(result.high().pulseSeconds().value()).isCloseTo(1900 * MICRO, within(6 * MICRO));
        assertThat(result.span().lowestSeconds()).isBetween(1070 * MICRO, 1095 * MICRO);
        assertThat(result.span().highestSeconds()).isBetween(1855 * MICRO, 1880 * MICRO);
        assertThat(result.span().centreSeconds()).isCloseTo(1475 * MICRO, within(10 * MICRO));
        assertThat(result.runningAmps().value()).isCloseTo(0.2, within(0.01));
        assertThat(result.noiseAmps()).isCloseTo(0.01, within(0.004));
        assertThat(ids(result)).contains("binds-low", "binds-high", "one-way");
        assertThat(result.cautions()).isNotEmpty();
    }

    /**
     * About 0.2 A near centre rising to about 0.58 A and 1.16 A at the two ends is a surface loaded unequally and near
     * binding at one end: common practice, no source. The rise between is drawn as a parabola here.
     */
    @Test
    void unequalEndsAreToldAndTheHeavierIsNearBinding() {
        SweepResult result = SweepAnalysis.of(Sweep.of(sweep(1000, 2000, pulse -> {
            double share = (pulse - 1500) / 500;
            return 0.2 + (share < 0 ? 0.38 : 0.96) * share * share;
        })));

        assertThat(ids(result)).contains("unequal-load", "near-stall");
        assertThat(result.remarks())
                .filteredOn(remark -> remark.id().equals("near-stall"))
                .singleElement()
                .satisfies(remark -> assertThat(remark.statement()).contains("long end"));
    }

    @Test
    void loadThatGrowsAllTheWayFromTheMiddleIsNoBinding() {
        SweepResult result = SweepAnalysis.of(Sweep.of(
                sweep(1000, 2000, pulse -> 0.2 + (pulse < 1500 ? 0.38 : 0.96) * Math.abs(pulse - 1500) / 500)));

        assertThat(ids(result)).contains("unequal-load", "near-stall").doesNotContain("binds-low", "binds-high");
        assertThat(result.span().lowestSeconds()).isEqualTo(1000 * MICRO);
        // 3.5 times about 0.23 A is reached where 0.2 + 0.00192 · x = 0.8, some 310 µs from the middle
        assertThat(result.span().highestSeconds()).isBetween(1780 * MICRO, 1880 * MICRO);
    }

    @Test
    void jamCloseToTheMiddleIsStillBinding() {
        SweepResult result = SweepAnalysis.of(Sweep.of(sweep(1000, 2000, binding(0, 1600))));

        assertThat(result.high().pulseSeconds().value()).isCloseTo(1600 * MICRO, within(8 * MICRO));
    }

    @Test
    void spikeAtOnePlaceInBothPassesIsAWornTrack() {
        DoubleUnaryOperator worn = pulse -> 0.2 + (Math.abs(pulse - 1600) < 1 ? 0.4 : 0);
        List<SweepPoint> both = new ArrayList<>(sweep(1000, 2000, worn));
        both.addAll(sweep(2000, 1000, worn));

        SweepResult twice = SweepAnalysis.of(Sweep.of(both));
        SweepResult once = SweepAnalysis.of(Sweep.of(sweep(1000, 2000, worn)));

        assertThat(ids(twice)).contains("worn-track").doesNotContain("one-way", "single-spike");
        assertThat(twice.spikes()).singleElement().satisfies(spike -> {
            assertThat(spike.pulseSeconds()).isCloseTo(1600 * MICRO, within(MICRO));
            assertThat(spike.passes()).isEqualTo(2);
        });
        assertThat(ids(once)).contains("single-spike").doesNotContain("binds-low", "binds-high");
    }

    @Test
    void stretchOfHeavierRunningIsAHotSpotNotBinding() {
        SweepResult result = SweepAnalysis.of(Sweep.of(
                sweep(1000, 2000, pulse -> 0.2 + (pulse >= 1300 && pulse <= 1360 ? 0.15 : 0))));

        assertThat(result.hotSpots()).singleElement().satisfies(spot -> {
            assertThat(spot.lowestSeconds()).isBetween(1290 * MICRO, 1320 * MICRO);
            assertThat(spot.riseAmps()).isCloseTo(0.15, within(0.03));
        });
        assertThat(result.low()).isNull();
        assertThat(result.high()).isNull();
    }

    @Test
    void holdsGiveIdleAndFriction() {
        List<SweepPoint> points = new ArrayList<>();
        for (int pulse = 1200; pulse <= 1800; pulse += 20) {
            points.add(new SweepPoint(pulse * MICRO, 0.25));
            points.add(new SweepPoint(pulse * MICRO, 0.02));
            points.add(new SweepPoint(pulse * MICRO, 0.021));
        }

        SweepResult result = SweepAnalysis.of(Sweep.of(points));

        assertThat(result.idleAmps().value()).isCloseTo(0.0205, within(0.001));
        assertThat(result.runningAmps().value()).isCloseTo(0.25, within(0.001));
        assertThat(result.frictionAmps().value()).isCloseTo(0.2295, within(0.001));
    }

    @Test
    void anglesGiveSlopeHysteresisAndDeadBand() {
        List<SweepPoint> points = new ArrayList<>();
        for (int step = 0; step <= 100; step++) {
            int pulse = step <= 50 ? 1250 + 10 * step : 1750 - 10 * (step - 50);
            double lag = step <= 50 ? -0.3 : 0.3;
            points.add(new SweepPoint(pulse * MICRO, 0.2, Math.toRadians(0.1 * (pulse - 1500) + lag)));
        }

        AngleTrack track = SweepAnalysis.of(Sweep.of(points)).angles();

        assertThat(Math.toDegrees(track.radiansPerPulseSecond().value()) * MICRO)
                .isCloseTo(0.1, within(0.002));
        assertThat(Math.toDegrees(track.hysteresisRadians().value())).isCloseTo(0.6, within(0.01));
        assertThat(track.deadBandSeconds().value()).isCloseTo(6 * MICRO, within(0.2 * MICRO));
    }

    @Test
    void laterSweepShowsWhatMoved() {
        SweepResult earlier = SweepAnalysis.of(Sweep.of(sweep(1000, 2100, binding(0, 1900))));
        SweepResult later = SweepAnalysis.of(Sweep.of(sweep(1000, 2100, binding(1100, 1850))));

        SweepComparison comparison = SweepComparison.of(earlier, later);

        assertThat(comparison.highShiftSeconds().value()).isCloseTo(-50 * MICRO, within(8 * MICRO));
        assertThat(comparison.remarks()).extracting(Remark::id).containsExactly("binding-moved", "binding-new");
        assertThat(SweepComparison.of(earlier, earlier).remarks()).isEmpty();
    }

    @Test
    void jitterOfThePulseIsNoTurnAndHalvesSweptApartAreOneSweep() {
        Random random = new Random(3);
        List<SweepPoint> points = new ArrayList<>();
        for (int half = -1; half <= 1; half += 2) {
            for (int step = 0; step <= 55; step++) {
                double pulse = 1500 + half * 10 * step + 12 * (random.nextDouble() - 0.5);
                points.add(new SweepPoint(pulse * MICRO, binding(1050, 1900).applyAsDouble(pulse)));
            }
        }

        SweepResult result = SweepAnalysis.of(Sweep.of(points));

        assertThat(result.low().pulseSeconds().value()).isCloseTo(1050 * MICRO, within(8 * MICRO));
        assertThat(result.high().pulseSeconds().value()).isCloseTo(1900 * MICRO, within(8 * MICRO));
    }

    @Test
    void readingsInNoOrderAreReadAsOneSweep() {
        List<SweepPoint> shuffled = new ArrayList<>(sweep(900, 2100, binding(1050, 1900)));
        Collections.shuffle(shuffled, new Random(5));

        SweepResult result = SweepAnalysis.of(Sweep.of(shuffled));

        assertThat(result.low().pulseSeconds().value()).isCloseTo(1050 * MICRO, within(8 * MICRO));
        assertThat(result.angles()).isNull();
    }

    @Test
    void manyThousandReadingsAreAnalysedToo() {
        Random random = new Random(4);
        List<SweepPoint> points = new ArrayList<>();
        for (int reading = 0; reading < 100_000; reading++) {
            double pulse = 900 + 1200 * Math.abs(reading % 20_000 - 10_000) / 10_000.0;
            points.add(new SweepPoint(
                    pulse * MICRO, binding(1050, 1900).applyAsDouble(pulse) + 0.02 * random.nextDouble()));
        }

        SweepResult result = SweepAnalysis.of(Sweep.of(points));

        assertThat(result.low().pulseSeconds().value()).isCloseTo(1050 * MICRO, within(8 * MICRO));
        assertThat(result.high().pulseSeconds().value()).isCloseTo(1900 * MICRO, within(8 * MICRO));
    }

    @Test
    void refusesThreePointsAndCurrentsNoServoTakes() {
        assertThatThrownBy(() -> Sweep.of(List.of(
                        new SweepPoint(1000 * MICRO, 0.2),
                        new SweepPoint(1500 * MICRO, 0.2),
                        new SweepPoint(2000 * MICRO, 0.6))))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("3 readings")
                .hasMessageContaining("12 pulses");
        assertThatThrownBy(() -> Sweep.of(sweep(1000, 2000, pulse -> 220)))
                .hasMessageContaining("current of reading 1 is")
                .hasMessageContaining("mA or A");
        assertThatThrownBy(() -> Sweep.of(sweep(2400, 2700, pulse -> 0.2))).hasMessageContaining("500 to 2500");
    }

    private static DoubleUnaryOperator binding(double low, double high) {
        return pulse -> 0.2 + 0.006 * Math.max(0, Math.max(low - pulse, pulse - high));
    }

    private static List<String> ids(SweepResult result) {
        return result.remarks().stream().map(Remark::id).toList();
    }

    private static List<SweepPoint> sweep(int from, int to, DoubleUnaryOperator amps) {
        Random random = new Random(7);
        int way = Integer.signum(to - from);
        return IntStream.rangeClosed(0, Math.abs(to - from) / 10)
                .map(step -> from + way * 10 * step)
                .mapToObj(pulse -> new SweepPoint(
                        pulse * MICRO, Math.max(0, amps.applyAsDouble(pulse) + 0.01 * random.nextGaussian())))
                .toList();
    }
}
