package fettle.planner.solve;

import fettle.planner.plan.Plan;
import fettle.planner.problem.OutingProblem;

/** Plans an outing. */
public final class OutingPlanner {
    private static final long SEED = 20_240_511;

    private OutingPlanner() {}

    /**
     * Plans until the plan is proven best, the effort is spent or progress says to stop. Always answers with a plan that keeps
     * every limit; at worst one that does nothing.
     *
     * @param problem the problem
     * @param effort how long to search
     * @param progress hears of better plans
     */
    public static Plan plan(OutingProblem problem, Effort effort, PlanProgress progress) {
        return new PlanSearch(ModelBuilder.of(problem), effort, progress, SEED).run();
    }
}
