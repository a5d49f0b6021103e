package fettle.planner.timer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.Pack;
import fettle.engine.pack.PackHistory;
import fettle.engine.pack.Run;
import fettle.engine.pack.model.Doubt;
import fettle.engine.pack.model.PackModel;
import fettle.engine.rule.Limits;
import fettle.engine.rule.RuleSet;
import fettle.engine.trace.Trace;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import java.time.Instant;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a timer must do whatever the figures. */
final class TimerTest {
    private static final Limits LIMITS = RuleSet.of(List.of()).limitsFor(Chemistry.LIPO, null, List.of());
    private static final double COULOMBS = TradeUnit.MILLIAMPERE_HOUR.toSi(3000);

    @Test
    void runsAllAlikeAndAPackThatIsSureGiveTheTimeByPlainDivision() {
        PackModel sure = pack().withDoubt(Doubt.NONE);
        TimerAnswer answer = TimerAnswer.of(new TimerQuestion(sure, LIMITS, runs(10, 10, 10, 10), null, 0.05));
        // 3000 mAh down to the reserve of 20 %, at 10 A
        double plain = 0.8 * COULOMBS / 10;
        assertThat(answer.typicalSeconds().value()).isCloseTo(plain, within(1e-3 * plain));
        assertThat(answer.settingSeconds()).isCloseTo((int) plain, within(2));
        assertThat(answer.binding()).contains("reserve");
    }

    @Test
    void aSmallerRiskAndAWiderSpreadBothShortenTheTimer() {
        int usual = setting(runs(9, 10, 11, 10), 0.05);
        assertThat(setting(runs(9, 10, 11, 10), 0.01)).isLessThan(usual);
        assertThat(setting(runs(7, 10, 13, 10), 0.05)).isLessThan(usual);
        assertThat(setting(runs(9, 10, 11, 10), 0.5)).isGreaterThan(usual);
    }

    @Test
    void oneRunAloneIsTrustedLessThanMany() {
        assertThat(setting(runs(10), 0.05)).isLessThan(setting(runs(9.5, 10, 10.5, 10, 10.2, 9.8), 0.05));
    }

    @Test
    void burstsBringTheUnderLoadMinimumForwardOfTheReserve() {
        PackModel weak = PackModel.uniform("P01", Chemistry.LIPO, 3, COULOMBS, 1, 0.03);
        TimerAnswer steady = TimerAnswer.of(new TimerQuestion(weak, LIMITS, runs(8, 8.2, 7.9), null, 0.05));
        TimerAnswer bursts = TimerAnswer.of(new TimerQuestion(weak, LIMITS, runs(8, 8.2, 7.9), 45.0, 0.05));
        assertThat(steady.binding()).contains("reserve");
        assertThat(bursts.binding()).contains("under load");
        assertThat(bursts.settingSeconds()).isLessThan(steady.settingSeconds());
    }

    @Test
    void theSettingIsTheQuantileOfItsRisk() {
        TimerAnswer answer = TimerAnswer.of(new TimerQuestion(pack(), LIMITS, runs(9, 10, 11, 10), null, 0.05));
        assertThat((double) answer.settingSeconds())
                .isCloseTo(answer.quantiles().get(0).seconds(), within(1.0));
        assertThat(answer.quantiles()).isSortedAccordingTo((a, b) -> Double.compare(a.seconds(), b.seconds()));
    }

    @Test
    void aRunThatDrewMoreShortensTheTimerAndIsSaidToHave() {
        TimerAnswer before = TimerAnswer.of(new TimerQuestion(pack(), LIMITS, runs(9.8, 10, 10.2, 10), null, 0.05));
        TimerReview review = TimerReview.of(before, run(14, 500));
        assertThat(review.surprise()).isGreaterThan(2);
        assertThat(review.statement()).startsWith("It drew more than expected");
        assertThat(review.corrected().settingSeconds()).isLessThan(before.settingSeconds());
        // 14 A for 500 s of 3000 mAh: 1944 mAh, 35 % left
        assertThat(review.left().value()).isCloseTo(1 - 14.0 * 500 / COULOMBS, within(1e-12));
        assertThat(review.keptReserve()).isTrue();
        assertThat(TimerReview.of(before, run(14, 700)).keptReserve()).isFalse();
    }

    @Test
    void aTraceBecomesPartsThatHoldItsNetCharge() {
        double[] time = new double[601];
        double[] volts = new double[601];
        double[] amps = new double[601];
        for (int i = 0; i < time.length; i++) {
            time[i] = i;
            volts[i] = 11;
            amps[i] = i % 50 < 5 ? -2 : 12;
        }
        RunDemand run = RunDemand.ofTrace(Trace.of(time, volts, amps));
        double net = 0;
        for (int i = 0; i < 600; i++) {
            net += 0.5 * (amps[i] + amps[i + 1]);
        }
        double parts = run.profile().stream()
                .mapToDouble(part -> part.amps() * part.seconds())
                .sum();
        assertThat(run.coulombs()).isCloseTo(net, within(1e-9));
        assertThat(parts).isCloseTo(net, within(1e-6 * net));
        assertThat(run.profile()).allMatch(part -> part.amps() >= 0).hasSize(200);
        assertThat(run.profile()).anyMatch(part -> part.amps() > 11.9);
    }

    @Test
    void onlyRunsBetweenChargesTellWhatWasPutBackAfterThem() {
        Instant day = Instant.parse("2026-05-01T10:00:00Z");
        PackHistory history = new PackHistory(
                registered(),
                List.of(),
                List.of(charge(day, 2000), charge(day.plusSeconds(7200), 1800), charge(day.plusSeconds(30_000), 2400)),
                List.of(
                        noted(day.plusSeconds(3600), "Heron"), // between two charges: tells
                        noted(day.plusSeconds(14_400), "Heron"), // nothing put back before the next run
                        noted(day.plusSeconds(18_000), "Heron"), // put back with the one before it
                        noted(day.plusSeconds(36_000), "Heron"))); // not yet charged
        List<RunDemand> told = RunDemands.of(history, "Heron");
        assertThat(told)
                .singleElement()
                .satisfies(run ->
                        assertThat(run.coulombs()).isCloseTo(TradeUnit.MILLIAMPERE_HOUR.toSi(1800), within(1e-9)));
        assertThat(RunDemands.of(history, "Otter")).isEmpty();
    }

    @Test
    void chargesThatEndBelowWhereTheRunBeganTellNothing() {
        Instant day = Instant.parse("2026-05-01T10:00:00Z");
        int cells = registered().cellsInSeries();
        ChargeRecord full = charge(day, 2000, 4.20 * cells);
        List<Run> run = List.of(noted(day.plusSeconds(3600), "Heron"));

        assertThat(told(run, full, charge(day.plusSeconds(7200), 900, 3.84 * cells)))
                .isEmpty();
        assertThat(told(
                        run,
                        charge(day.plusSeconds(7200), 900, 3.84 * cells),
                        charge(day.minusSeconds(90_000), 1, 4.2 * cells)))
                .isEmpty();
        assertThat(told(run, full, charge(day.plusSeconds(7200), 1800, 4.19 * cells)))
                .hasSize(1);
        assertThat(told(run, full, charge(day.plusSeconds(7200), 1800))).hasSize(1);
        // where the first run began was not noted; the second began at storage and ended full, which only asks too much
        List<Run> two = List.of(noted(day.plusSeconds(3600), "Heron"), noted(day.plusSeconds(10_800), "Heron"));
        assertThat(told(
                        two,
                        charge(day.plusSeconds(7200), 900, 3.84 * cells),
                        charge(day.plusSeconds(14_400), 2800, 4.20 * cells)))
                .extracting(RunDemand::coulombs)
                .containsExactly(TradeUnit.MILLIAMPERE_HOUR.toSi(2800));
    }

    private static List<RunDemand> told(List<Run> runs, ChargeRecord... charges) {
        List<ChargeRecord> oldestFirst = Arrays.stream(charges)
                .sorted(Comparator.comparing(ChargeRecord::endedAt))
                .toList();
        return RunDemands.of(new PackHistory(registered(), List.of(), oldestFirst, runs), "Heron");
    }

    @Test
    void nothingKnownAndAPackAtItsLimitAreRefused() {
        assertThatThrownBy(() -> new TimerQuestion(pack(), LIMITS, List.of(), null, 0.05))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("no earlier run");
        PackModel empty = pack().withCharge(0.15);
        assertThatThrownBy(() -> TimerAnswer.of(new TimerQuestion(empty, LIMITS, runs(10), null, 0.05)))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("as soon as the load comes on");
    }

    private static int setting(List<RunDemand> runs, double risk) {
        return TimerAnswer.of(new TimerQuestion(pack(), LIMITS, runs, null, risk))
                .settingSeconds();
    }

    private static PackModel pack() {
        return PackModel.uniform("P01", Chemistry.LIPO, 3, COULOMBS, 1, 0.005);
    }

    private static List<RunDemand> runs(double... amps) {
        return Arrays.stream(amps).mapToObj(one -> run(one, 400)).toList();
    }

    private static RunDemand run(double amps, double seconds) {
        return RunDemand.ofPutBack(Chemistry.LIPO, amps * seconds, seconds);
    }

    private static ChargeRecord charge(Instant at, double milliampereHours) {
        return new ChargeRecord(at, TradeUnit.MILLIAMPERE_HOUR.toSi(milliampereHours), null, null, "");
    }

    private static ChargeRecord charge(Instant at, double milliampHours, double endVolts) {
        return new ChargeRecord(at, TradeUnit.MILLIAMPERE_HOUR.toSi(milliampHours), endVolts, null, "");
    }

    private static Run noted(Instant at, String craft) {
        return new Run(at, craft, 480, null, null, null, "");
    }

    private static Pack registered() {
        return new Pack(
                "P01",
                Chemistry.LIPO,
                3,
                1,
                COULOMBS,
                null,
                null,
                null,
                "",
                null,
                "",
                Pack.Identity.CONFIRMED,
                List.of(),
                "");
    }
}
