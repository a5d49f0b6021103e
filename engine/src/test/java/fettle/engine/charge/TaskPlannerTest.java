package fettle.engine.charge;

import static fettle.engine.pack.Packs.NOW;
import static fettle.engine.pack.Packs.check;
import static fettle.engine.pack.Packs.history;
import static fettle.engine.pack.Packs.lipo;
import static fettle.engine.pack.Packs.packVolts;
import static org.assertj.core.api.Assertions.assertThat;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.Check;
import fettle.engine.pack.MeterAccuracy;
import fettle.engine.pack.Pack;
import fettle.engine.pack.PackHistory;
import fettle.engine.pack.Packs;
import fettle.engine.pack.PresentCapacity;
import fettle.engine.pack.Standing;
import fettle.engine.pack.assessment.PackAssessor;
import fettle.engine.rule.RuleSet;
import fettle.engine.supply.Charger;
import fettle.engine.supply.Port;
import fettle.engine.supply.Source;
import fettle.engine.supply.SourceKind;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TaskPlannerTest {
    private static final RuleSet RULES = RuleSet.of(List.of());

    /** Each row makes another limit the strictest: rating A, port A, port W, charger W, source W, then the amps expected. */
    @ParameterizedTest(name = "{0} A rating, {1} A and {2} W port, {3} W charger, {4} W source → {5} because of {6}")
    @CsvSource({
        "2, 20, 1000, 1000, 1000, 2.0 A, pack rating",
        "50, 3, 1000, 1000, 1000, 3.0 A, port 3.0 A",
        "50, 20, 67.2, 1000, 1000, 4.0 A, port 67 W",
        "50, 20, 1000, 33.6, 1000, 2.0 A, charger 34 W",
        "50, 20, 1000, 1000, 33.6, 1.7 A, source shed 34 W",
        "0, 20, 1000, 1000, 1000, 5.0 A, 1.0C where no rating is known"
    })
    void chargesAtTheStrictestLimitAndNamesIt(
            double rating,
            double portAmps,
            double portWatts,
            double chargerWatts,
            double sourceWatts,
            String amps,
            String why) {
        Pack pack = rating == 0 ? lipo(4, 5000) : rated(rating);
        Task task = only(
                TaskKind.CHARGE,
                plan(
                        history(pack, check(1, 3.8, 3.8, 3.8, 3.8)),
                        charger(portAmps, portWatts, chargerWatts),
                        sourceWatts));
        assertThat(task.instruction())
                .contains(" at " + amps + " on bench port 1")
                .contains("4.20 V per cell");
        assertThat(task.reason()).contains("because the strictest limit is " + why);
        assertThat(task.caution()).contains("Stay with it");
        assertThat(task.working().steps().get(0).inputs()).hasSizeGreaterThanOrEqualTo(5);
    }

    @Test
    void aLimitedPackIsChargedAtHalfTheUsualCurrent() {
        PackHistory history = history(lipo(4, 5000), check(40, 2.9, 3.1, 3.1, 3.1), check(1, 3.8, 3.8, 3.8, 3.8));
        Task task = only(TaskKind.CHARGE, plan(history, charger(20, 1000, 1000), 1000));
        assertThat(task.instruction()).contains(" at 2.5 A ");
        assertThat(task.reason()).contains("condition");
    }

    @Test
    void aPackStillHotFromARunIsCooledBeforeAnythingElse() {
        Check hot = new Check(
                NOW.minusSeconds(600),
                List.of(3.7, 3.7),
                null,
                600.0,
                TradeUnit.CELSIUS.toSi(48),
                List.of(),
                "",
                Set.of(),
                "");
        assertThat(plan(history(lipo(2, 1000), hot), charger(20, 1000, 1000), 1000))
                .extracting(Task::kind)
                .containsExactly(TaskKind.COOL);
    }

    @Test
    void aFullPackIsDueToStorageWhenTheStorageTimeIsOver() {
        PackHistory history = history(lipo(4, 5000), check(1, 4.19, 4.19, 4.19, 4.19));
        List<Task> tasks = plan(history, charger(20, 1000, 1000), 1000);
        assertThat(tasks).hasSize(1);
        assertThat(tasks.get(0).kind()).isEqualTo(TaskKind.STORE);
        assertThat(tasks.get(0).due()).isEqualTo(NOW.plus(Duration.ofDays(2)));
        assertThat(tasks.get(0).instruction())
                .contains("mAh to the storage band")
                .contains("bench port 1");
    }

    /** Port power, capacity in mAh and discharge rating in A against the current expected; 4S at 3.7 V nominal = 14.8 V. */
    @ParameterizedTest(name = "{0} W, {1} mAh, {2} A rating → {3}")
    @CsvSource({"30, 5000, 100, 2.0 A", "300, 450, 100, 0.45 A", "300, 5000, 3, 3.0 A"})
    void bringsAPackToStorageAtTheStrictestOfPortPowerOneCAndRating(
            double watts, double capacity, double rating, String amps) {
        Charger charger = new Charger(
                "bench", null, Set.of(Chemistry.LIPO), "shed", List.of(new Port(1, 20, 1000, 8, 0.5, watts)), "");
        PackHistory history = history(rated(capacity, null, rating), check(1, 4.19, 4.19, 4.19, 4.19));
        Task task = only(TaskKind.STORE, plan(history, charger, 1000));
        assertThat(task.instruction()).contains("to the storage band at " + amps + ", about ");
    }

    @Test
    void aCautionSpeaksOfTheBalanceLeadOnlyWhereThereIsOne() {
        Task lithium = only(
                TaskKind.CHARGE, plan(history(lipo(4, 5000), check(1, 3.8, 3.8, 3.8, 3.8)), charger(9, 99, 99), 99));
        assertThat(lithium.caution()).contains("balance lead connected");
        Task single = only(TaskKind.CHARGE, plan(history(lipo(1, 450), check(1, 3.8)), charger(9, 99, 99), 99));
        assertThat(single.caution()).doesNotContain("balance lead").contains("cell count, pack between");
        Pack nimh = Packs.pack(Chemistry.NIMH, 6, 3000, Pack.Identity.CONFIRMED);
        assertThat(only(TaskKind.CHARGE, plan(history(nimh, packVolts(1, 7.5)), charger(9, 99, 99), 99))
                        .caution())
                .doesNotContain("balance lead");
    }

    @Test
    void aSmallPackIsDischargedAtNoMoreThanItsOneHourCurrent() {
        Task task = only(TaskKind.STORE, plan(history(lipo(1, 450), check(1, 4.19)), charger(20, 1000, 1000), 1000));
        assertThat(task.instruction()).contains(" at 0.45 A, about ");
    }

    @Test
    void balancingTimeIsTheChargeDifferenceOverTheBleedCurrent() {
        PackHistory history = history(lipo(2, 1000), check(1, 4.18, 4.15));
        Task task = only(TaskKind.BALANCE, plan(history, charger(20, 1000, 1000), 1000));
        double coulombs = PackAssessor.assess(history, RULES, MeterAccuracy.USUAL, NOW)
                .imbalanceCoulombs()
                .value();
        assertThat(task.instruction()).contains("about " + Math.round(coulombs / 0.5 / 60) + " ±");
    }

    @Test
    void noGroundedOrUnprovenPackIsEverToldToCharge() {
        long seed = 20260509;
        Random random = new Random(seed);
        int grounded = 0;
        for (int trial = 0; trial < 2000; trial++) {
            PackHistory history = history(randomPack(random), randomCheck(random));
            var assessment = PackAssessor.assess(history, RULES, MeterAccuracy.USUAL, NOW);
            List<Task> tasks = TaskPlanner.plan(assessment, RULES, List.of(charger(20, 1000, 1000)), List.of(), NOW);
            if (assessment.standing().compareTo(Standing.UNPROVEN) >= 0) {
                grounded++;
                assertThat(tasks)
                        .as("seed %s trial %s", seed, trial)
                        .isNotEmpty()
                        .noneMatch(task -> Set.of(TaskKind.CHARGE, TaskKind.BALANCE, TaskKind.STORE)
                                .contains(task.kind()));
            }
        }
        assertThat(grounded).isBetween(200, 1950);
    }

    /** A pack of 5000 mAh rated 10 A (2C) that holds 4000 mAh today: 2C of that is 8 A. */
    @Test
    void chargesAtTheRateOfWhatThePackWasMeasuredToHold() {
        PackHistory history = history(rated(10), check(1, 3.8, 3.8, 3.8, 3.8));
        Task label = only(TaskKind.CHARGE, plan(history, charger(20, 1000, 1000), 1000));
        Task faded = only(TaskKind.CHARGE, planned(history, 4000));
        Task more = only(TaskKind.CHARGE, planned(history, 5600));
        assertThat(label.instruction()).contains("at 10.0 A");
        assertThat(faded.instruction()).contains("at 8.0 A");
        assertThat(faded.reason()).contains("2.0C of the 4000 mAh it was measured to hold");
        assertThat(more.instruction()).as("never looser than the label").isEqualTo(label.instruction());
    }

    private static List<Task> planned(PackHistory history, double milliampereHours) {
        double coulombs = TradeUnit.MILLIAMPERE_HOUR.toSi(milliampereHours);
        PresentCapacity present = new PresentCapacity(
                new Estimate(coulombs, 0.02 * coulombs, List.of()),
                history.pack().ratedCapacityCoulombs(),
                "5 charges");
        return TaskPlanner.plan(
                PackAssessor.assess(history, present, RULES, MeterAccuracy.USUAL, NOW),
                RULES,
                List.of(charger(20, 1000, 1000)),
                List.of(new Source("shed", SourceKind.MAINS, 1000, null, "")),
                NOW);
    }

    private static Pack randomPack(Random random) {
        return Packs.pack(
                Chemistry.values()[random.nextInt(6)],
                1 + random.nextInt(4),
                1000,
                random.nextInt(4) == 0 ? Pack.Identity.UNCONFIRMED : Pack.Identity.CONFIRMED);
    }

    private static Check randomCheck(Random random) {
        int cells = 1 + random.nextInt(4);
        List<Double> volts = new ArrayList<>();
        double middle = 1 + 3.5 * random.nextDouble();
        for (int cell = 0; cell < cells; cell++) {
            volts.add(middle + 0.02 * random.nextGaussian());
        }
        return check(1, random.nextInt(10) == 0 ? Set.of(Check.Sign.SMELL) : Set.of(), volts.toArray(new Double[0]));
    }

    private static List<Task> plan(PackHistory history, Charger charger, double sourceWatts) {
        return TaskPlanner.plan(
                PackAssessor.assess(history, RULES, MeterAccuracy.USUAL, NOW),
                RULES,
                List.of(charger),
                List.of(new Source("shed", SourceKind.MAINS, sourceWatts, null, "")),
                NOW);
    }

    private static Task only(TaskKind kind, List<Task> tasks) {
        List<Task> found = tasks.stream().filter(task -> task.kind() == kind).toList();
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    private static Pack rated(double amps) {
        return rated(5000, amps, null);
    }

    private static Pack rated(double milliampereHours, @Nullable Double chargeAmps, @Nullable Double dischargeAmps) {
        return new Pack(
                "P07",
                Chemistry.LIPO,
                4,
                1,
                TradeUnit.MILLIAMPERE_HOUR.toSi(milliampereHours),
                chargeAmps,
                dischargeAmps,
                null,
                "",
                null,
                "",
                Pack.Identity.CONFIRMED,
                List.of(),
                "");
    }

    private static Charger charger(double amps, double portWatts, double totalWatts) {
        return new Charger(
                "bench",
                totalWatts,
                Set.of(Chemistry.values()),
                "shed",
                List.of(new Port(1, amps, portWatts, 8, 0.5, 30.0)),
                "");
    }
}
