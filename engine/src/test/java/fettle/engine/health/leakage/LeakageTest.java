package fettle.engine.health.leakage;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.engine.cell.Chemistry;
import fettle.engine.cell.DefaultCurves;
import fettle.engine.cell.RestCurve;
import fettle.engine.pack.Check;
import fettle.engine.pack.MeterAccuracy;
import fettle.engine.pack.PackHistory;
import fettle.engine.pack.Packs;
import fettle.engine.pack.Run;
import fettle.engine.units.TradeUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Loss at rest of made-up packs whose leaks are known. */
class LeakageTest {
    private static final RestCurve CURVE = DefaultCurves.of(Chemistry.LIPO);
    private static final Instant START = Instant.parse("2026-01-05T18:00:00Z");
    private static final double CAPACITY = TradeUnit.AMPERE_HOUR.toSi(5);
    private static final MeterAccuracy METER = new MeterAccuracy(0.002);

    @Test
    void leakingCellIsFoundWhileItsVoltsStillLookGood() {
        double[] perDay = {0.0007, 0.0007, 0.0030, 0.0007};
        List<Check> checks = checks(perDay, 6, 0.52, new Random(4));
        List<Double> last = checks.get(checks.size() - 1).cellRestVolts();
        assertThat(Math.abs(last.get(0) - last.get(2))).as("gap in volts").isLessThan(0.08);
        List<CellLeak> leaks = Leakage.of(history(checks, List.of()), CURVE, METER, CAPACITY);
        assertThat(leaks).extracting(CellLeak::alarm).containsExactly(false, false, true, false);
        double excess = leaks.get(2).excessAmps().value() * 86_400;
        double truth = (0.0030 - 0.0007) * CAPACITY;
        assertThat(Math.abs(excess - truth))
                .isLessThan(3 * 86_400 * leaks.get(2).excessAmps().standardDeviation());
    }

    @Test
    void intervalsCoverTheTrueLossAndAlarmsAreRare() {
        Random random = new Random(20_260_104);
        int inside = 0;
        int alarms = 0;
        int packs = 1500;
        for (int i = 0; i < packs; i++) {
            double[] perDay = {0.0006, 0.0007, 0.0008, 0.0007};
            PackHistory history = history(checks(perDay, 5, 0.3 + 0.6 * random.nextDouble(), random), List.of());
            List<CellLeak> leaks = Leakage.of(history, CURVE, METER, CAPACITY);
            double away = leaks.get(2).lossAmps().value() * 86_400 - 0.0008 * CAPACITY;
            inside += Math.abs(away) <= 1.96 * 86_400 * leaks.get(2).lossAmps().standardDeviation() ? 1 : 0;
            alarms += leaks.stream().anyMatch(CellLeak::alarm) ? 1 : 0;
        }
        assertThat(inside / (double) packs).isBetween(0.93, 0.97);
        assertThat(alarms).isLessThanOrEqualTo(6);
    }

    @Test
    void useBetweenChecksIsNotTakenForLoss() {
        List<Check> checks = checks(new double[] {0, 0, 0, 0}, 2, 0.9, new Random(1));
        List<Check> used = checks(new double[] {0, 0, 0, 0}, 2, 0.3, new Random(1));
        List<Check> both = new ArrayList<>(checks);
        used.forEach(check -> both.add(new Check(
                check.takenAt().plus(Duration.ofDays(20)),
                check.cellRestVolts(),
                null,
                check.restSeconds(),
                null,
                List.of(),
                "",
                Set.of(),
                "")));
        Run run = new Run(START.plus(Duration.ofDays(15)), "", 300, null, null, null, "");
        List<CellLeak> leaks = Leakage.of(history(both, List.of(run)), CURVE, METER, CAPACITY);
        assertThat(Math.abs(leaks.get(0).lossAmps().value()))
                .isLessThan(3 * leaks.get(0).lossAmps().standardDeviation());
    }

    private static PackHistory history(List<Check> checks, List<Run> runs) {
        return new PackHistory(Packs.lipo(4, 5000), checks, List.of(), runs);
    }

    private static List<Check> checks(double[] lossPerDay, int count, double startCharge, Random random) {
        List<Check> checks = new ArrayList<>();
        for (int week = 0; week < count; week++) {
            List<Double> volts = new ArrayList<>();
            for (double loss : lossPerDay) {
                volts.add(CURVE.volts(startCharge - 7 * week * loss) + 0.002 * random.nextGaussian());
            }
            checks.add(new Check(
                    START.plus(Duration.ofDays(7L * week)), volts, null, 7200.0, null, List.of(), "", Set.of(), ""));
        }
        return checks;
    }
}
