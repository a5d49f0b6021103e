package fettle.bench.outing;

import fettle.planner.plan.GoalValue;
import fettle.planner.plan.Plan;
import fettle.planner.problem.OutingProblem;
import fettle.planner.solve.Effort;
import fettle.planner.solve.OutingPlanner;
import fettle.planner.solve.PlanProgress;
import fettle.planner.validate.PlanValidator;
import java.util.Locale;

/** Plans invented evenings and prints values, bounds and seconds. Arguments: packs, ports, seconds, seeds. */
public final class OutingPlanning {
    private OutingPlanning() {}

    public static void main(String[] args) {
        int packs = Integer.parseInt(args[0]);
        int ports = Integer.parseInt(args[1]);
        double seconds = Double.parseDouble(args[2]);
        int seeds = Integer.parseInt(args[3]);
        for (long seed = 1; seed <= seeds; seed++) {
            OutingProblem problem =
                    args.length > 4 ? Evening.withField(packs, ports, seed) : Evening.atHome(packs, ports, seed);
            Plan plan = OutingPlanner.plan(problem, Effort.seconds(seconds), PlanProgress.silent());
            StringBuilder line = new StringBuilder();
            for (GoalValue value : plan.goals()) {
                line.append(String.format(
                        Locale.ROOT,
                        " | %d [%d] %.1f%%",
                        value.units(),
                        value.boundUnits(),
                        100 * value.gapFraction()));
            }
            System.out.printf(
                    Locale.ROOT,
                    "seed %d %.2f s tried %d steps %d %s%s%s%n",
                    seed,
                    plan.effort().seconds(),
                    plan.effort().plansTried(),
                    plan.effort().boundSteps(),
                    plan.provenBest() ? "proven" : "open",
                    PlanValidator.check(problem, plan).isEmpty() ? "" : " INVALID",
                    line);
        }
    }
}
