package fettle.planner.validate;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.planner.RandomProblems;
import fettle.planner.plan.ChargeJob;
import fettle.planner.plan.GoalValue;
import fettle.planner.plan.Plan;
import fettle.planner.plan.PlannedRun;
import fettle.planner.problem.OutingProblem;
import fettle.planner.solve.Effort;
import fettle.planner.solve.OutingPlanner;
import fettle.planner.solve.PlanProgress;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** Spoils sound plans one figure at a time; each must be found out. */
class PlanValidatorTest {
    private static final int PLANS = 60;

    @Test
    void findsAChargeThatIsTooShort() {
        charges(job -> moved(job, job.startMinute(), job.endMinute() - 1), "duration");
    }

    @Test
    void findsAChargeOffItsStep() {
        charges(job -> moved(job, job.startMinute() + 3, job.endMinute() + 3), "step");
    }

    @Test
    void findsAChargeNobodyAttends() {
        charges(job -> moved(job, 1000, 1000 + job.endMinute() - job.startMinute()), "presence");
    }

    @Test
    void findsTwoChargesOnOnePort() {
        everyPlan((problem, plan) -> {
            List<ChargeJob> twice = new ArrayList<>(plan.charges());
            twice.add(plan.charges().get(0));
            assertThat(rules(problem, with(plan, twice, plan.runs()))).contains("port", "pack");
        });
    }

    @Test
    void findsARunFromAPackThatWasNotCharged() {
        int found = 0;
        for (long seed = 0; seed < PLANS; seed++) {
            OutingProblem problem = RandomProblems.of(seed, 3, 2, 4);
            Plan plan = OutingPlanner.plan(problem, Effort.rounds(0), PlanProgress.silent());
            List<String> rules = rules(problem, with(plan, List.of(), plan.runs()));
            found += rules.contains("reserve") ? 1 : 0;
        }
        assertThat(found).isGreaterThan(PLANS / 3);
    }

    @Test
    void findsARunMadeTwiceAndOutsideItsTimes() {
        everyPlan((problem, plan) -> {
            if (!plan.runs().isEmpty()) {
                PlannedRun run = plan.runs().get(0);
                int length = run.endMinute() - run.startMinute();
                List<PlannedRun> runs = new ArrayList<>(plan.runs());
                runs.add(new PlannedRun(run.run(), run.craft(), run.packs(), 0, length));
                assertThat(rules(problem, with(plan, plan.charges(), runs))).contains("run", "window", "presence");
            }
        });
    }

    @Test
    void findsAWrongCount() {
        everyPlan((problem, plan) -> {
            List<GoalValue> goals = plan.goals().stream()
                    .map(value -> new GoalValue(
                            value.goal(), value.count() + 1, value.units(), value.boundUnits(), value.mostUnits()))
                    .toList();
            Plan spoilt = new Plan(plan.charges(), plan.runs(), goals, plan.brokenLocks(), plan.effort());
            assertThat(rules(problem, spoilt)).hasSize(goals.size()).containsOnly("count");
        });
    }

    private interface Check {
        void check(OutingProblem problem, Plan plan);
    }

    private static void everyPlan(Check check) {
        int checked = 0;
        for (long seed = 0; seed < PLANS; seed++) {
            OutingProblem problem = RandomProblems.of(seed, 3, 2, 4);
            Plan plan = OutingPlanner.plan(problem, Effort.rounds(0), PlanProgress.silent());
            if (!plan.charges().isEmpty()) {
                checked++;
                check.check(problem, plan);
            }
        }
        assertThat(checked).isGreaterThan(PLANS / 3);
    }

    private static void charges(UnaryOperator<ChargeJob> spoiling, String rule) {
        everyPlan((problem, plan) -> {
            List<ChargeJob> charges = new ArrayList<>(plan.charges());
            charges.set(0, spoiling.apply(charges.get(0)));
            assertThat(rules(problem, with(plan, charges, plan.runs()))).contains(rule);
        });
    }

    private static ChargeJob moved(ChargeJob job, int start, int end) {
        return new ChargeJob(
                job.way(),
                job.packs(),
                job.port(),
                job.target(),
                start,
                end,
                job.fromFraction(),
                job.toFraction(),
                job.sourceWattHours());
    }

    private static Plan with(Plan plan, List<ChargeJob> charges, List<PlannedRun> runs) {
        return new Plan(charges, runs, plan.goals(), plan.brokenLocks(), plan.effort());
    }

    private static List<String> rules(OutingProblem problem, Plan plan) {
        return PlanValidator.check(problem, plan).stream().map(Violation::rule).toList();
    }
}
