package fettle.planner.solve;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.planner.RandomProblems;
import fettle.planner.plan.Plan;
import fettle.planner.problem.OutingProblem;
import fettle.planner.problem.PlanPack;
import fettle.planner.validate.PlanValidator;
import org.junit.jupiter.api.Test;

class PlannerPropertiesTest {
    private static final int INSTANCES = 2000;

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
}
