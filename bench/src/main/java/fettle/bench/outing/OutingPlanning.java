package fettle.bench.outing;

import fettle.planner.plan.GoalValue;
import fettle.planner.plan.Plan;
import fettle.planner.problem.OutingProblem;
import fettle.planner.solve.Effort;
import fettle.planner.solve.OutingPlanner;
import fettle.planner.validate.PlanValidator;
import java.util.Locale;

/**
 * Plans invented evenings beside "shortest first" and a general-purpose constraint solver, and prints a table. Arguments: packs,
 * ports, seconds, how many evenings, then {@code field} for days with charging at the field (not for the general solver).
 */
public final class OutingPlanning {
    private OutingPlanning() {}

    public static void main(String[] args) {
        int packs = Integer.parseInt(args[0]);
        int ports = Integer.parseInt(args[1]);
        double seconds = Double.parseDouble(args[2]);
        int seeds = Integer.parseInt(args[3]);
        boolean field = args.length > 4;
        System.out.println(
                "value left out, missed storage, pack-hours at full, stress, 10 Wh at the field, quarter hours"
                        + " to the finish; [bound]");
        for (long seed = 1; seed <= seeds; seed++) {
            OutingProblem problem = field ? Evening.withField(packs, ports, seed) : Evening.atHome(packs, ports, seed);
            ours(problem, seed, seconds);
            plain(problem);
            if (!field) {
                general(problem, seconds);
            }
        }
    }

    private static void ours(OutingProblem problem, long seed, double seconds) {
        double[] first = {-1};
        long began = System.nanoTime();
        double processorBegan = processorSeconds();
        Plan plan = OutingPlanner.plan(problem, Effort.seconds(seconds), best -> {
            first[0] = first[0] < 0 ? (System.nanoTime() - began) * 1e-9 : first[0];
            return true;
        });
        StringBuilder line = new StringBuilder();
        for (GoalValue value : plan.goals()) {
            line.append(String.format(
                    Locale.ROOT, " | %d [%d] %.1f %%", value.units(), value.boundUnits(), 100 * value.gapFraction()));
        }
        System.out.printf(
                Locale.ROOT,
                "%d ours: first %.2f s, %s %.2f s, processor %.2f s, %d plans, %d bound steps%s%s%n",
                seed,
                first[0],
                plan.provenBest() ? "proven in" : "stopped at",
                plan.effort().seconds(),
                processorSeconds() - processorBegan,
                plan.effort().plansTried(),
                plan.effort().boundSteps(),
                PlanValidator.check(problem, plan).isEmpty() ? "" : " INVALID",
                line);
    }

    /** Processor time of the whole process, compiling of the running code included [s]. */
    private static double processorSeconds() {
        return ProcessHandle.current().info().totalCpuDuration().orElseThrow().toMillis() * 1e-3;
    }

    private static void plain(OutingProblem problem) {
        ShortestFirst rule = new ShortestFirst(problem);
        Tally tally = Tally.of(problem, rule.charges(), rule.runs());
        System.out.printf(
                "  shortest first:%s | %d | %d | %d%n",
                PlanValidator.check(problem, Tally.plan(rule.charges(), rule.runs()))
                                .isEmpty()
                        ? ""
                        : " INVALID",
                tally.lostValue(),
                tally.storageUnits(),
                tally.fullUnits(problem));
    }

    private static void general(OutingProblem problem, double seconds) {
        long began = System.nanoTime();
        double processorBegan = processorSeconds();
        GeneralSolver.Outcome outcome = new GeneralSolver(problem).solve(seconds);
        System.out.printf(
                Locale.ROOT,
                "  general solver: %s %.2f s, processor %.2f s | %d | - | %d%n",
                outcome.proven() ? "proven in" : "stopped at",
                (System.nanoTime() - began) * 1e-9,
                processorSeconds() - processorBegan,
                outcome.lostValue(),
                outcome.fullMinutes() < 0 ? -1 : problem.goals().get(2).units(outcome.fullMinutes()));
    }
}
