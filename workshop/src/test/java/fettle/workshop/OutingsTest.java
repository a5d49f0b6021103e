package fettle.workshop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fettle.engine.outing.Happened;
import fettle.engine.outing.KeptPlan;
import fettle.engine.outing.KeptPlan.PlannedCharge;
import fettle.engine.outing.KeptPlan.PlannedRun;
import fettle.engine.outing.Outing;
import fettle.engine.units.InputException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutingsTest {
    private static final PlanSpeed QUICK = new PlanSpeed(1);

    @TempDir
    private Path folder;

    private Workshop workshop;
    private String tomorrow;

    @BeforeEach
    void open() {
        workshop = OutingFixtures.shelf(folder);
        tomorrow = LocalDate.ofInstant(WorkshopFixtures.MORNING, ZoneOffset.UTC)
                .plusDays(1)
                .toString();
        workshop.outingShelf().add(OutingFixtures.lakeDay(tomorrow).toOuting());
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    @Test
    void plansEveryRunThatCanBeAndKeepsThePlan() {
        KeptPlan plan = workshop.outings().plan("lake day", QUICK, best -> true);
        assertThat(plan.runs()).extracting(PlannedRun::run).hasSize(4);
        assertThat(plan.goals()).isNotEmpty();
        assertThat(plan.inputs()).anyMatch(line -> line.startsWith("A1: tend, charge 5"));
        assertThat(workshop.outings().find("Lake day").plan()).isEqualTo(plan);
    }

    @Test
    void neverPlansAGroundedPackNorOneThatFitsNothing() {
        KeptPlan plan = workshop.outings().plan("Lake day", QUICK, best -> true);
        assertThat(plan.runs()).flatExtracting(PlannedRun::packs).doesNotContain("C1", "B1");
        assertThat(plan.charges()).flatExtracting(PlannedCharge::packs).doesNotContain("C1");
        assertThat(plan.remarks()).anyMatch(remark -> remark.startsWith("C1 is left out: grounded"));
    }

    @Test
    void chargesOnlyWhileSomebodyIsThere() {
        KeptPlan plan = workshop.outings().plan("Lake day", QUICK, best -> true);
        Outing outing = workshop.outings().find("Lake day").outing();
        assertThat(plan.charges())
                .isNotEmpty()
                .allSatisfy(charge -> assertThat(outing.attended())
                        .anyMatch(here -> here.spot() == charge.spot()
                                && !charge.begins().isBefore(here.from())
                                && !charge.ends().isAfter(here.until())));
    }

    @Test
    void saysWhyAPackIsNotPlanned() {
        workshop.outings().plan("Lake day", QUICK, best -> true);
        assertThat(workshop.outings().why("Lake day", "C1"))
                .singleElement()
                .asString()
                .contains("grounded");
        assertThat(workshop.outings().why("Lake day", "B1"))
                .singleElement()
                .asString()
                .contains("fits no run that is wanted")
                .contains("Heron takes 3S, B1 is 4S");
        assertThat(workshop.outings().why("Lake day", "A1")).isNotEmpty();
    }

    @Test
    void keepsWhatIsSettledThroughEveryLaterPlan() {
        workshop.outings().settle("Lake day", "Heron 1 with A3");
        workshop.outings().settle("Lake day", "not A2");
        KeptPlan plan = workshop.outings().plan("Lake day", QUICK, best -> true);
        assertThat(plan.runs())
                .filteredOn(run -> run.run().equals("Heron 1"))
                .extracting(PlannedRun::packs)
                .containsExactly(List.of("A3"));
        assertThat(plan.runs()).flatExtracting(PlannedRun::packs).doesNotContain("A2");
        workshop.outings().unsettle("Lake day", "not A2");
        assertThat(workshop.outings().find("Lake day").outing().choices()).hasSize(1);
    }

    @Test
    void editingTheFormKeepsWhatWasSettled() {
        workshop.outings().settle("Lake day", "not A2");
        Outing present = workshop.outings().find("Lake day").outing();
        OutingForm typed = OutingForm.of(present);
        assertThat(typed.toOuting().withChoices(present.choices())).isEqualTo(present);
        Outing edited = new OutingForm(
                        typed.name(),
                        typed.date(),
                        typed.zone(),
                        typed.leaveHome(),
                        typed.arrive(),
                        typed.packUp(),
                        typed.backHome(),
                        "25C",
                        typed.attended(),
                        typed.feeds(),
                        typed.packs(),
                        typed.runs(),
                        typed.goals(),
                        typed.storageBy(),
                        typed.note())
                .toOuting();
        workshop.outingShelf().edit("Lake day", edited);
        assertThat(workshop.outings().find("Lake day").outing().choices()).isEqualTo(present.choices());
    }

    @Test
    void notesStartFinishAndPutBackAndThePackRecordGetsThem() {
        KeptPlan plan = workshop.outings().plan("Lake day", QUICK, best -> true);
        PlannedRun first = plan.runs().get(0);
        workshop.outings().began("Lake day", first.run());
        assertThatThrownBy(() -> workshop.outings().began("Lake day", first.run()))
                .hasMessageContaining("has begun already");
        workshop.outings().ended("Lake day", first.run());
        workshop.outings().putBack("Lake day", first.run(), 5_000);
        Happened done = workshop.outings().find("Lake day").outing().happened().get(0);
        assertThat(done.putBackCoulombs()).isEqualTo(5_000);
        PackFile pack = workshop.review().pack(first.packs().get(0));
        assertThat(pack.history().runs()).hasSize(1);
        assertThat(pack.history().charges()).hasSize(1);
        workshop.history().undo(workshop.history().recent(0, 1).get(0).id());
        assertThat(workshop.outings()
                        .find("Lake day")
                        .outing()
                        .happened()
                        .get(0)
                        .putBackCoulombs())
                .isNull();
    }

    @Test
    void plansAgainFromThePresentWithoutWhatIsDone() {
        KeptPlan before = workshop.outings().plan("Lake day", QUICK, best -> true);
        workshop.outings().began("Lake day", "Heron 1");
        workshop.outings().ended("Lake day", "Heron 1");
        KeptPlan after = workshop.outings().plan("Lake day", QUICK, best -> true);
        assertThat(before.runs()).extracting(PlannedRun::run).contains("Heron 1");
        assertThat(after.runs()).extracting(PlannedRun::run).doesNotContain("Heron 1");
    }

    @Test
    void saysWhenAPlanIsOutOfDate() {
        workshop.outings().plan("Lake day", QUICK, best -> true);
        assertThat(workshop.outings().find("Lake day").outdated()).isEmpty();
        workshop.entries().enter("A2 swollen");
        assertThat(workshop.outings().find("Lake day").outdated()).contains("check of A2");
    }

    @Test
    void tellsOfAFirstPlanAndStopsWhenAsked() {
        AtomicInteger told = new AtomicInteger();
        workshop.outings().plan("Lake day", new PlanSpeed(60), best -> told.incrementAndGet() < 2);
        assertThat(told.get()).isBetween(1, 2);
    }

    @Test
    void refusesADayThatIsOver() {
        workshop.outingShelf()
                .add(new OutingForm(
                                "Long ago",
                                "2020-05-16",
                                "UTC",
                                "08:00",
                                "09:00",
                                "15:00",
                                "16:00",
                                "18C",
                                "",
                                "",
                                "A1",
                                "Heron; 10:00 to 11:00; 6 min",
                                "",
                                "",
                                "")
                        .toOuting());
        assertThatThrownBy(() -> workshop.outings().plan("Long ago", QUICK, best -> true))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("Long ago is over");
    }

    @Test
    void refusesToSettleWhatIsNotThere() {
        assertThatThrownBy(() -> workshop.outings().settle("Lake day", "Heron 9 with A1"))
                .hasMessageContaining("no run of Lake day")
                .hasMessageContaining("Heron 4");
        assertThatThrownBy(() -> workshop.outings().settle("Lake day", "not Z9"))
                .hasMessageContaining("Z9 is not among the packs");
    }

    @Test
    void givesEveryPlannedRunATimerAndEveryPackItsPlaceInBaggage() {
        KeptPlan plan = workshop.outings().plan("Lake day", QUICK, best -> true);
        OutingPapers papers = workshop.outings().papers("Lake day");
        assertThat(papers.timers()).hasSameSizeAs(plan.runs()).allSatisfy(timer -> {
            // 2200 mAh at 12 A with a fifth in reserve: 8.8 min at the most
            assertThat(timer.settingSeconds()).isBetween(240, 528);
            assertThat((double) timer.settingSeconds())
                    .isLessThan(timer.typicalSeconds().value());
        });
        assertThat(papers.packing())
                .filteredOn(line -> line.pack().equals("C1"))
                .singleElement()
                .satisfies(line -> assertThat(line.carriage()).isEqualTo("not as baggage"));
        assertThat(papers.packing())
                .filteredOn(line -> line.pack().equals("A1"))
                .singleElement()
                .satisfies(line -> assertThat(line.ratingJoules()).isBetween(87_000.0, 89_000.0));
        assertThat(papers.confirm()).contains("Confirm with the carrier", "2026-03-27");
    }
}
