package fettle.planner.validate;

import fettle.planner.plan.Plan;
import fettle.planner.problem.OutingProblem;
import java.util.ArrayList;
import java.util.List;

/** Checks a plan from the plan and the problem alone, minute by minute. */
public final class PlanValidator {
    private PlanValidator() {}

    /** Everything the plan breaks; empty if nothing. */
    public static List<Violation> check(OutingProblem problem, Plan plan) {
        List<Violation> found = new ArrayList<>();
        new ChargeChecks(problem, plan, found).check();
        new RunChecks(problem, plan, found).check();
        problem.packs().forEach(pack -> new PackChecks(problem, plan, pack, found).check());
        if (found.isEmpty()) {
            new CountChecks(problem, plan, found).check();
        }
        return found;
    }
}
