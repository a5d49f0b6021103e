package fettle.engine.health;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.engine.cell.Chemistry;
import fettle.engine.cell.DefaultCurves;
import fettle.engine.cell.RestCurve;
import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.Check;
import fettle.engine.pack.Finding;
import fettle.engine.pack.MeterAccuracy;
import fettle.engine.pack.Pack;
import fettle.engine.pack.PackHistory;
import fettle.engine.pack.Packs;
import fettle.engine.pack.Standing;
import fettle.engine.rule.RuleSet;
import fettle.engine.units.TradeUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PackHealthTest {
    private static final RestCurve CURVE = DefaultCurves.of(Chemistry.LIPO);
    private static final Instant START = Instant.parse("2025-03-01T10:00:00Z");
    private static final double BEFORE = 0.08;
    private static final RuleSet RULES = RuleSet.of(List.of());

    @Test
    void packWithoutAChargeHasOnlyItsLabel() {
        PackHealth health = health(new PackHistory(Packs.lipo(4, 5000), List.of(), List.of(), List.of()));
        assertThat(health.capacity().influences()).isEmpty();
        assertThat(health.findings()).isEmpty();
        assertThat(health.passed()).isEmpty();
        assertThat(health.capacityAgeing()).isNull();
    }

    @Test
    void fadedPackIsLimited() {
        PackHealth health = health(fading(0.55, 0));
        assertThat(health.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.id()).isEqualTo("capacity-below-limit");
            assertThat(finding.standing()).isEqualTo(Standing.LIMITED);
            assertThat(finding.statement()).contains("of its label");
        });
        assertThat(health.cells()).hasSize(4);
    }

    @Test
    void slowlyFadingPackRetiresAtADateWithAnInterval() {
        PackHealth health = health(fading(0.98, 0.002));
        assertThat(health.findings()).isEmpty();
        assertThat(health.passed()).anyMatch(passed -> passed.contains("not surely below 80 %"));
        Ageing ageing = health.capacityAgeing();
        assertThat(ageing).isNotNull();
        double truth = 98 - 40; // a fifth of 0.98 is lost after 98 cycles; forty are in the record
        assertThat(ageing.crossing().low()).isLessThan(truth);
        assertThat(ageing.crossing().high()).isGreaterThan(truth);
        assertThat(ageing.date(ageing.crossing().median())).isPresent();
    }

    @Test
    void leakingCellGroundsThePack() {
        List<Check> checks = new ArrayList<>();
        Random random = new Random(3);
        for (int week = 0; week < 6; week++) {
            List<Double> volts = new ArrayList<>();
            for (int cell = 0; cell < 4; cell++) {
                volts.add(CURVE.volts(0.55 - week * (cell == 1 ? 0.03 : 0.005)) + 0.003 * random.nextGaussian());
            }
            checks.add(check(START.plus(Duration.ofDays(7L * week)), volts, List.of()));
        }
        PackHealth health = health(new PackHistory(Packs.lipo(4, 5000), checks, List.of(), List.of()));
        assertThat(health.findings()).extracting(Finding::id).containsExactly("leaking-cell");
        assertThat(health.findings().get(0).standing()).isEqualTo(Standing.GROUNDED);
        assertThat(health.findings().get(0).statement()).startsWith("cell 2 loses");
        assertThat(health.findings().get(0).advice()).contains("Do not charge it");
    }

    @Test
    void growingResistanceHasItsOwnTrend() {
        List<Check> checks = new ArrayList<>();
        List<ChargeRecord> charges = new ArrayList<>();
        for (int month = 0; month < 10; month++) {
            Instant when = START.plus(Duration.ofDays(30L * month));
            checks.add(check(when, List.of(3.85, 3.85, 3.85, 3.85), List.of(0.004 * (1 + 0.05 * month))));
            charges.add(new ChargeRecord(
                    when.plus(Duration.ofHours(2)), TradeUnit.MILLIAMPERE_HOUR.toSi(25_000), null, null, ""));
        }
        PackHealth health = health(new PackHistory(Packs.lipo(4, 5000), checks, charges, List.of()));
        Ageing ageing = health.resistanceAgeing();
        assertThat(ageing).isNotNull();
        assertThat(ageing.trend().fadePerCycle().value()).isBetween(0.006, 0.012);
        double truth = (1.0 / 0.05 - 9) * 5; // doubles in month 20, five cycles a month
        assertThat(ageing.crossing().low()).isLessThan(truth);
        assertThat(ageing.crossing().high()).isGreaterThan(truth);
    }

    private static PackHealth health(PackHistory history) {
        return PackHealth.of(history, RULES, MeterAccuracy.USUAL);
    }

    /** Forty full cycles of charges from nearly empty, where curves agree, to full, weekly, of a pack that starts at a share of its label and fades. */
    private static PackHistory fading(double startShare, double perCycle) {
        Pack pack = Packs.lipo(4, 5000);
        Random random = new Random(5);
        List<Check> checks = new ArrayList<>();
        List<ChargeRecord> charges = new ArrayList<>();
        double cycles = 0;
        for (int week = 0; cycles < 40; week++) {
            Instant when = START.plus(Duration.ofDays(7L * week));
            double capacity = (startShare - perCycle * cycles) * pack.ratedCapacityCoulombs();
            double volts = CURVE.volts(BEFORE);
            List<Double> cells = new ArrayList<>();
            for (int cell = 0; cell < 4; cell++) {
                cells.add(volts + 0.003 * random.nextGaussian());
            }
            double returned = (0.985 - BEFORE) * capacity;
            checks.add(check(when, cells, List.of()));
            charges.add(new ChargeRecord(when.plus(Duration.ofHours(2)), returned, 16.8, null, ""));
            cycles += returned / pack.ratedCapacityCoulombs();
        }
        return new PackHistory(pack, checks, charges, List.of());
    }

    private static Check check(Instant when, List<Double> volts, List<Double> ohms) {
        return new Check(when, volts, null, 7200.0, TradeUnit.CELSIUS.toSi(25), ohms, "", Set.of(), "");
    }
}
