package fettle.engine.pack.assessment;

import static fettle.engine.pack.Packs.NOW;
import static fettle.engine.pack.Packs.charged;
import static fettle.engine.pack.Packs.check;
import static fettle.engine.pack.Packs.daysBefore;
import static fettle.engine.pack.Packs.history;
import static fettle.engine.pack.Packs.lipo;
import static fettle.engine.pack.Packs.packVolts;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.Assessment;
import fettle.engine.pack.Check;
import fettle.engine.pack.Finding;
import fettle.engine.pack.MeterAccuracy;
import fettle.engine.pack.Pack;
import fettle.engine.pack.PackHistory;
import fettle.engine.pack.Packs;
import fettle.engine.pack.PresentCapacity;
import fettle.engine.pack.Run;
import fettle.engine.pack.Standing;
import fettle.engine.rule.RuleSet;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PackAssessorTest {
    @Test
    void callsAFullBalancedPackReadyAndSaysWhichChecksItPassed() {
        Assessment assessment = assess(history(lipo(4, 5000), check(0.5, 4.19, 4.19, 4.19, 4.19)));
        assertThat(assessment.standing()).isEqualTo(Standing.READY);
        assertThat(assessment.findings()).isEmpty();
        assertThat(assessment.passed())
                .contains("no swelling, damage or smell noted", "cells within the imbalance limit")
                .doesNotContain("no cell's resistance has doubled");
    }

    @Test
    void takesChargeFromTheWeakestCellAndLeavesTheReserveOut() {
        Assessment assessment = assess(history(lipo(4, 5000), check(0.5, 3.95, 3.95, 3.95, 3.90)));
        double weakest = assessment.cells().get(3).charge().value();
        assertThat(assessment.charge().value()).isEqualTo(weakest);
        double expected = (weakest - 0.20) * 5000;
        assertThat(TradeUnit.MILLIAMPERE_HOUR.fromSi(assessment.usableCoulombs().value()))
                .isCloseTo(expected, within(1e-6));
        assertThat(assessment.usableCoulombs().drivers().get(0).cause()).isEqualTo("charge of the weakest cell");
    }

    @Test
    void findsThePackNeverChecked() {
        Assessment assessment = assess(history(lipo(4, 5000)));
        assertThat(assessment.standing()).isEqualTo(Standing.UNPROVEN);
        assertThat(ids(assessment)).containsExactly("never-checked");
        assertThat(assessment.charge()).isNull();
    }

    @Test
    void keepsASwollenPackGroundedThoughLaterChecksLookWell() {
        Assessment assessment =
                assess(history(lipo(2, 1000), check(30, Set.of(Check.Sign.SWELLING), 3.8, 3.8), check(1, 4.19, 4.19)));
        assertThat(assessment.standing()).isEqualTo(Standing.GROUNDED);
        assertThat(ids(assessment)).contains("swelling");
    }

    @Test
    void groundsAnOverDischargedPackAndLimitsItAfterwards() {
        Assessment now = assess(history(lipo(3, 2200), check(1, 3.1, 2.61, 3.1)));
        assertThat(now.standing()).isEqualTo(Standing.GROUNDED);
        assertThat(ids(now)).contains("over-discharge");
        assertThat(now.counts().overDischarges()).isEqualTo(1);
        Assessment later = assess(history(lipo(3, 2200), check(40, 3.1, 2.61, 3.1), check(1, 4.19, 4.19, 4.19)));
        assertThat(later.standing()).isEqualTo(Standing.LIMITED);
        assertThat(later.counts().overDischarges()).isEqualTo(1);
    }

    @Test
    void findsAPackLeftFullForNineteenDays() {
        PackHistory history = new PackHistory(
                lipo(4, 5000), List.of(check(25, 3.8, 3.8, 3.8, 3.8), check(10, 4.18, 4.18, 4.18, 4.18)),
                List.of(charged(19, 16.8)), List.of());
        Assessment assessment = assess(history);
        assertThat(assessment.fullSince()).isEqualTo(daysBefore(19));
        assertThat(ids(assessment)).containsExactly("kept-full");
        assertThat(assessment.findings().get(0).statement()).contains("19 d").contains("72 h");
    }

    @Test
    void aRunEndsTheTimeKeptFull() {
        Run run = new Run(daysBefore(5), "Heron", 420, 0.3, null, null, "");
        PackHistory history = new PackHistory(
                lipo(4, 5000), List.of(check(25, 3.8, 3.8, 3.8, 3.8)), List.of(charged(19, 16.8)), List.of(run));
        Assessment assessment = assess(history);
        assertThat(assessment.fullSince()).isNull();
        assertThat(assessment.charge().value()).isEqualTo(0.3);
    }

    @Test
    void asksWhetherSevenOrEightCellsWhenPackVoltsFitBoth() {
        Pack pack = Packs.pack(Chemistry.LIPO, 8, 5000, Pack.Identity.UNCONFIRMED);
        Assessment assessment = assess(history(pack, packVolts(1, 29.4)));
        assertThat(assessment.standing()).isEqualTo(Standing.UNPROVEN);
        Finding finding = finding(assessment, "contradiction");
        assertThat(finding.statement()).contains("7S at 4.20 V").contains("8S at 3.6");
        assertThat(finding.advice()).contains("Do not charge");
    }

    @Test
    void groundsAPackWhoseVoltsItsChemistryCannotHaveAndListsWhatTheyFit() {
        Assessment assessment = assess(history(lipo(4, 1550), check(1, 4.33, 4.33, 4.34, 4.33)));
        assertThat(assessment.standing()).isEqualTo(Standing.GROUNDED);
        assertThat(finding(assessment, "contradiction").statement()).contains("it would fit LiHV");
    }

    @Test
    void groundsAPackWhoseEveryCellIsTooLowForItsChemistryAndListsWhatTheyFit() {
        Assessment assessment = assess(history(lipo(4, 1550), check(1, 1.31, 1.30, 1.31, 1.31)));
        assertThat(assessment.standing()).isEqualTo(Standing.GROUNDED);
        assertThat(finding(assessment, "contradiction").statement()).contains("it would fit NiMH");
        Assessment oneDead = assess(history(lipo(4, 1550), check(1, 3.8, 1.31, 3.8, 3.8)));
        assertThat(ids(oneDead)).contains("over-discharge").doesNotContain("contradiction");
    }

    @Test
    void groundsAPackWithAnotherNumberOfCellsThanRegistered() {
        Assessment assessment = assess(history(lipo(4, 1550), check(1, 3.8, 3.8, 3.8)));
        assertThat(assessment.standing()).isEqualTo(Standing.GROUNDED);
        assertThat(finding(assessment, "contradiction").statement())
                .isEqualTo("3 cells were read on a pack registered as 4S; they would fit 3S");
    }

    @Test
    void saysWhichEntryTheChargeNowComesFrom() {
        Assessment charged = assess(new PackHistory(
                lipo(4, 5000), List.of(check(2, 3.8, 3.8, 3.8, 3.8)), List.of(charged(1, 16.8)), List.of()));
        assertThat(charged.working().steps())
                .filteredOn(step -> step.title().equals("charge now"))
                .singleElement()
                .satisfies(step -> {
                    assertThat(step.inputs().get(0)).contains("charged to the limit");
                    assertThat(step.result()).isEqualTo("100 ± 3 %");
                });
    }

    @Test
    void namesTheCellThatFallsBehindFromCheckToCheck() {
        List<Check> checks = new ArrayList<>();
        for (int month = 0; month < 8; month++) {
            double noise = month % 2 == 0 ? 0.001 : -0.001;
            checks.add(check(210 - 30.0 * month, 3.82 + noise, 3.82, 3.82 - 0.002 * month, 3.82 - noise));
        }
        Assessment assessment = assess(new PackHistory(lipo(4, 5000), checks, List.of(), List.of()));
        assertThat(assessment.standing()).isEqualTo(Standing.LIMITED);
        assertThat(finding(assessment, "drifting-cell").statement())
                .isEqualTo("cell 3 falls behind the others by 13.7 ± 0.1 mAh a month over 8 checks");
        assertThat(ids(assessment)).doesNotContain("imbalance");
    }

    @Test
    void tellsImbalanceInMillivoltsAndInChargeWhichDifferOnAFlatCurve() {
        Assessment steep = assess(history(lipo(2, 5000), check(1, 4.10, 4.07)));
        Assessment flat =
                assess(history(Packs.pack(Chemistry.LIFEPO4, 2, 5000, Pack.Identity.CONFIRMED), check(1, 3.28, 3.25)));
        assertThat(steep.imbalanceVolts()).isCloseTo(flat.imbalanceVolts(), within(1e-9));
        assertThat(flat.imbalanceCoulombs().value())
                .isGreaterThan(5 * steep.imbalanceCoulombs().value());
    }

    @Test
    void asksForBalancingAboveTheLimitAndNotAtIt() {
        assertThat(ids(assess(history(lipo(2, 5000), check(1, 3.85, 3.83))))).doesNotContain("imbalance");
        assertThat(ids(assess(history(lipo(2, 5000), check(1, 3.851, 3.83))))).contains("imbalance");
    }

    @Test
    void warnsThatPackVoltsAloneHideAWeakCell() {
        Assessment assessment = assess(history(lipo(4, 5000), packVolts(1, 16.72)));
        assertThat(ids(assessment)).contains("pack-volts-only");
        assertThat(assessment.cells()).isEmpty();
        assertThat(assessment.charge().value()).isGreaterThan(0.95);
    }

    @Test
    void countsAnEntryAboveTheTemperatureLimit() {
        Run hot = new Run(daysBefore(1), "Heron", 420, 0.3, null, TradeUnit.CELSIUS.toSi(66), "");
        Assessment assessment =
                assess(new PackHistory(lipo(2, 5000), List.of(check(2, 4.19, 4.19)), List.of(), List.of(hot)));
        assertThat(assessment.counts().overTemperatures()).isEqualTo(1);
        assertThat(ids(assessment)).contains("over-temperature");
    }

    @Test
    void groundsAPackWhoseLatestChargeEndedAboveTheLimit() {
        Assessment assessment = assess(new PackHistory(
                lipo(4, 5000), List.of(check(2, 3.8, 3.8, 3.8, 3.8)), List.of(charged(1, 17.0)), List.of()));
        assertThat(assessment.standing()).isEqualTo(Standing.GROUNDED);
        assertThat(finding(assessment, "over-charge").statement()).contains("4.250 V");
        assertThat(assessment.counts().overCharges()).isEqualTo(1);
    }

    @Test
    void findsADoubledResistanceAtTheSameTemperatureOnly() {
        Check first = resistance(200, 25, 2.0);
        assertThat(ids(assess(history(lipo(1, 5000), first, resistance(1, 25, 4.1)))))
                .contains("resistance");
        assertThat(ids(assess(history(lipo(1, 5000), first, resistance(1, 0, 4.1)))))
                .doesNotContain("resistance");
    }

    @Test
    void doubtGrowsWhereTheCurveIsFlat() {
        double lithium = assess(history(lipo(1, 1000), check(1, 3.95))).charge().standardDeviation();
        double iron = assess(history(Packs.pack(Chemistry.LIFEPO4, 1, 1000, Pack.Identity.CONFIRMED), check(1, 3.28)))
                .charge()
                .standardDeviation();
        assertThat(iron).isGreaterThan(3 * lithium).isLessThan(0.5);
    }

    @Test
    void plansWithWhatWasMeasuredAndNeverWithMoreThanTheLabel() {
        PackHistory history = history(lipo(4, 5000), check(0.5, 3.95, 3.95, 3.95, 3.95));
        Assessment label = assess(history);
        Assessment faded = assess(history, 4000);
        Assessment more = assess(history, 5500);
        assertThat(faded.usableCoulombs().value())
                .isCloseTo(0.8 * label.usableCoulombs().value(), within(1e-6));
        assertThat(faded.usableCoulombs().drivers())
                .anyMatch(driver -> driver.cause().equals("measured capacity"));
        assertThat(more.usableCoulombs().value())
                .isEqualTo(label.usableCoulombs().value());
        assertThat(faded.capacity().evidence()).isEqualTo("five runs");
        assertThat(String.join(
                        "; ",
                        faded.working()
                                .steps()
                                .get(faded.working().steps().size() - 1)
                                .inputs()))
                .contains("capacity = 4000 mAh", "measured from five runs");
    }

    private static Assessment assess(PackHistory history, double milliampereHours) {
        double coulombs = TradeUnit.MILLIAMPERE_HOUR.toSi(milliampereHours);
        PresentCapacity present = new PresentCapacity(
                new Estimate(coulombs, 0.02 * coulombs, List.of()),
                history.pack().ratedCapacityCoulombs(),
                "five runs");
        return PackAssessor.assess(history, present, RuleSet.of(List.of()), MeterAccuracy.USUAL, NOW);
    }

    private static Check resistance(double daysAgo, double celsius, double milliohms) {
        return new Check(
                daysBefore(daysAgo),
                List.of(4.19),
                null,
                7200.0,
                TradeUnit.CELSIUS.toSi(celsius),
                List.of(TradeUnit.MILLIOHM.toSi(milliohms)),
                "",
                Set.of(),
                "");
    }

    private static Assessment assess(PackHistory history) {
        return PackAssessor.assess(history, RuleSet.of(List.of()), MeterAccuracy.USUAL, NOW);
    }

    private static List<String> ids(Assessment assessment) {
        return assessment.findings().stream().map(Finding::id).toList();
    }

    private static Finding finding(Assessment assessment, String id) {
        return assessment.findings().stream()
                .filter(found -> found.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
