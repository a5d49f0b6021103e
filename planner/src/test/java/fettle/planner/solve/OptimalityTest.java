package fettle.planner.solve;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.planner.TinyProblems;
import fettle.planner.plan.GoalValue;
import fettle.planner.plan.Plan;
import fettle.planner.problem.OutingProblem;
import fettle.planner.validate.Enumeration;
import fettle.planner.validate.PlanValidator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Beside {@link Enumeration}, which tries everything: 180 tiny problems, each with goals in an order of its own. */
class OptimalityTest {
    @ParameterizedTest(name = "{1} problems of {0} packs")
    @CsvSource({"2, 60", "3, 120"})
    void reachesWhatTryingEverythingReachesAndProvesMostOfIt(int packs, int problems) {
        int proven = 0;
        int goals = 0;
        for (long seed = 0; seed < problems; seed++) {
            OutingProblem problem = TinyProblems.of(seed, packs);
            Plan plan = OutingPlanner.plan(problem, Effort.rounds(600), PlanProgress.silent());
            assertThat(PlanValidator.check(problem, plan)).as("seed %d", seed).isEmpty();
            long[] units = plan.goals().stream().mapToLong(GoalValue::units).toArray();
            assertThat(units).as("seed %d %s", seed, problem.goals()).isEqualTo(Enumeration.best(problem));
            goals += units.length;
            proven += (int) plan.goals().stream().filter(GoalValue::provenBest).count();
        }
        assertThat(proven).isGreaterThan(goals * 9 / 10);
    }
}
