package fettle.planner.solve;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.planner.RandomProblems;
import fettle.planner.TinyProblems;
import fettle.planner.plan.GoalValue;
import fettle.planner.plan.Plan;
import fettle.planner.problem.OutingProblem;
import fettle.planner.problem.PlanPack;
import fettle.planner.validate.PlanValidator;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class PlannerPropertiesTest {
    private static final int INSTANCES = 2000;
    private static final int RELAXED = 400;

    @Test
    void neverBreaksALimitNorPlansAGroundedPack() {
        int runs = 0;
        for (long seed = 0; seed < INSTANCES; seed++) {
            OutingProblem problem =
                    RandomProblems.of(seed, 2 + (int) (seed % 5), 1 + (int) (seed % 3), (int) (seed % 6));
            Plan plan = OutingPlanner.plan(problem, Effort.rounds(5), PlanProgress.silent());
            assertThat(PlanValidator.check(problem, plan)).as("seed %d", seed).isEmpty();
            for (PlanPack pack : problem.packs()) {
                assertThat(pack.barred() && plan.uses(pack.tag()))
                        .as("seed %d", seed)
                        .isFalse();
            }
            runs += plan.runs().size();
        }
        assertThat(runs).isGreaterThan(INSTANCES / 2);
    }

    @Test
    void isNeverWorseWhereALimitIsRelaxed() {
        int compared = 0;
        for (long seed = 0; seed < RELAXED; seed++) {
            OutingProblem tight = TinyProblems.of(seed, 2 + (int) (seed % 2));
            OutingProblem loose = Relaxed.of(tight, (int) (seed % Relaxed.KINDS));
            Plan worse = OutingPlanner.plan(tight, Effort.rounds(200), PlanProgress.silent());
            Plan better = OutingPlanner.plan(loose, Effort.rounds(200), PlanProgress.silent());
            if (better.provenBest()) {
                compared++;
                assertThat(Arrays.compare(units(better), units(worse)))
                        .as("seed %d", seed)
                        .isNotPositive();
            }
        }
        assertThat(compared).isGreaterThan(RELAXED * 6 / 10);
    }

    private static long[] units(Plan plan) {
        return plan.goals().stream().mapToLong(GoalValue::units).toArray();
    }
}
