package fettle.planner.why;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.engine.pack.Standing;
import fettle.planner.plan.Plan;
import fettle.planner.problem.ChargeCurve;
import fettle.planner.problem.ChargeCurve.Direction;
import fettle.planner.problem.ChargeWay;
import fettle.planner.problem.GoalSetting;
import fettle.planner.problem.Lock;
import fettle.planner.problem.OutingProblem;
import fettle.planner.problem.PackSet;
import fettle.planner.problem.Place;
import fettle.planner.problem.PlanCharger;
import fettle.planner.problem.PlanPack;
import fettle.planner.problem.PlanPort;
import fettle.planner.problem.PowerSource;
import fettle.planner.problem.Presence;
import fettle.planner.problem.RunWanted;
import fettle.planner.problem.Span;
import fettle.planner.problem.Target;
import fettle.planner.solve.Effort;
import fettle.planner.solve.OutingPlanner;
import fettle.planner.solve.PlanProgress;
import java.util.List;
import org.junit.jupiter.api.Test;

class WhyNotTest {
    private static final MinuteText TEXT = minute -> "minute " + minute;

    @Test
    void saysThatAGroundedPackIsNeverPlanned() {
        OutingProblem problem =
                day(60, 100, List.of(pack("P1", 0.5), grounded("P7")), List.of(run("fly", 4, "P1", "P7")));
        Explanation why = new WhyNot(problem, plan(problem), TEXT).pack("P7");
        assertThat(why.reason()).isEqualTo("P7 is grounded and is never planned.");
        assertThat(why.changes()).isEmpty();
    }

    @Test
    void saysThatAPackFitsNothing() {
        OutingProblem problem = day(60, 100, List.of(pack("P1", 0.5), pack("P7", 0.5)), List.of(run("fly", 4, "P1")));
        assertThat(new WhyNot(problem, plan(problem), TEXT).pack("P7").reason())
                .isEqualTo("P7 fits none of the runs wanted.");
    }

    @Test
    void namesTheTimeAtHomeAndTheSmallestLongerStayThatHelps() {
        OutingProblem problem = day(35, 100, List.of(pack("P1", 0.5)), List.of(run("fly", 4, "P1")));
        Plan plan = plan(problem);
        assertThat(plan.runs()).isEmpty();
        Explanation why = new WhyNot(problem, plan, TEXT).run("fly");
        assertThat(why.reason())
                .startsWith("fly cannot be made, even with all other runs left out: what binds is the time at home");
        assertThat(why.changes().get(0).sentence()).isEqualTo("stay at home until minute 50, 15 min longer");
        assertThat(plan(why.changes().get(0).problem()).runs()).hasSize(1);
    }

    @Test
    void namesThePowerOfASourceThatIsTooWeak() {
        OutingProblem problem = day(120, 45, List.of(pack("P1", 0.5)), List.of(run("fly", 4, "P1")));
        Explanation why = new WhyNot(problem, plan(problem), TEXT).pack("P1");
        assertThat(why.reason()).contains("the power of mains");
        assertThat(why.changes().get(0).sentence()).isEqualTo("a source of 50 W instead of mains with 45 W");
    }

    @Test
    void saysWhichRunWouldHaveToGive() {
        List<PlanPack> one = List.of(pack("P1", 0.5));
        OutingProblem problem = day(60, 100, one, List.of(run("show", 9, "P1"), run("fun", 2, "P1")));
        Explanation why = new WhyNot(problem, plan(problem), TEXT).run("fun");
        assertThat(why.reason()).isEqualTo("fun (worth 2) could only be made instead of show.");
    }

    @Test
    void saysThatAnotherPackDoesAsWellOrWhatItWouldCost() {
        List<PlanPack> two = List.of(pack("P1", 1.0), pack("P7", 0.5));
        OutingProblem problem = day(60, 100, two, List.of(run("fly", 4, "P1", "P7")));
        Plan plan = plan(problem);
        assertThat(plan.runs().get(0).packs()).containsExactly("P1");
        assertThat(new WhyNot(problem, plan, TEXT).pack("P7").reason())
                .startsWith("P7 could make fly, but the plan would be worse in every pack to storage in time");
    }

    @Test
    void saysWhyALockCannotBeKept() {
        OutingProblem problem = day(60, 100, List.of(pack("P1", 0.5)), List.of(run("fly", 4, "P1")))
                .withLocks(List.of(new Lock.ChargeAt("P1 on port", 45, Target.FULL)));
        Plan plan = plan(problem);
        assertThat(plan.brokenLocks()).containsExactly("P1 on port at minute 45 to full");
        Explanation why = new WhyNot(problem, plan, TEXT).brokenLocks().get(0);
        assertThat(why.reason()).contains("the time at home");
    }

    private static Plan plan(OutingProblem problem) {
        return OutingPlanner.plan(problem, Effort.rounds(50), PlanProgress.silent());
    }

    private static OutingProblem day(int homeMinutes, int watts, List<PlanPack> packs, List<RunWanted> runs) {
        List<ChargeWay> ways = packs.stream()
                .map(pack -> ChargeWay.single(
                        pack.tag() + " on port", pack.tag(), "port", 2, ChargeCurve.even(Direction.FILLING, 80, 50), 0))
                .toList();
        return new OutingProblem(
                new OutingProblem.Time(400, 5),
                List.of(
                        new Presence(Place.HOME, new Span(0, homeMinutes)),
                        new Presence(Place.FIELD, new Span(180, 300))),
                new OutingProblem.Means(
                        List.of(PowerSource.endless("mains", Place.HOME, watts)),
                        List.of(new PlanCharger("charger", "mains", null, 1)),
                        List.of(new PlanPort("port", "charger", 100)),
                        ways),
                packs,
                runs,
                List.of(),
                GoalSetting.usualOrder());
    }

    private static PlanPack pack(String tag, double charge) {
        return new PlanPack(tag, Standing.READY, charge, PlanPack.Levels.USUAL, new PlanPack.Times(0, 0, 0, 400), 1);
    }

    private static PlanPack grounded(String tag) {
        return new PlanPack(tag, Standing.GROUNDED, 0.5, PlanPack.Levels.USUAL, new PlanPack.Times(0, 0, 0, 400), 1);
    }

    private static RunWanted run(String name, int value, String... packs) {
        return new RunWanted(
                name,
                "craft",
                value,
                new RunWanted.Times(180, 280, 10, 0),
                List.of(packs).stream().map(pack -> PackSet.of(pack, 0.6)).toList());
    }
}
