package fettle.planner.why;

import fettle.planner.plan.GoalValue;
import fettle.planner.plan.Plan;
import fettle.planner.problem.Lock;
import fettle.planner.problem.OutingProblem;
import fettle.planner.problem.PackSet;
import fettle.planner.problem.RunWanted;
import fettle.planner.solve.Effort;
import fettle.planner.solve.OutingPlanner;
import fettle.planner.solve.PlanProgress;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Plans the day with one pack made to fly, to see what that costs. */
final class PackTrial {
    private final OutingProblem problem;
    private final Plan plan;
    private final String tag;
    private final Effort effort;

    PackTrial(OutingProblem problem, Plan plan, String tag, Effort effort) {
        this.problem = problem;
        this.plan = plan;
        this.tag = tag;
        this.effort = effort;
    }

    /** What the least costly of some runs with the pack would cost. */
    Explanation explain(List<RunWanted> runs) {
        Optional<Plan> best = Optional.empty();
        String with = "";
        for (RunWanted run : runs) {
            Optional<Plan> trial = trial(run);
            boolean better = trial.isPresent()
                    && (best.isEmpty()
                            || WhyNot.worseIn(best.get(), trial.get()).isPresent());
            if (better) {
                best = trial;
                with = run.name();
            }
        }
        return new Explanation(tag, reason(best, with), List.of());
    }

    private String reason(Optional<Plan> best, String run) {
        if (best.isEmpty()) {
            return tag + " could only fly against a choice that is locked.";
        }
        Optional<GoalValue> worse = WhyNot.worseIn(best.get(), plan);
        if (worse.isEmpty()) {
            return tag + " could make " + run + " as well; the pack planned for it does as well by every goal.";
        }
        GoalValue now = plan.goal(worse.get().goal()).orElseThrow();
        return tag + " could make " + run + ", but the plan would be worse in "
                + worse.get().goal().label() + ": "
                + worse.get().count() + " instead of " + now.count() + " ("
                + worse.get().goal().meaning() + ").";
    }

    private Optional<Plan> trial(RunWanted run) {
        for (PackSet set : run.fits()) {
            if (set.tags().contains(tag) && isFree(run)) {
                List<Lock> locks = new ArrayList<>(problem.locks());
                locks.add(new Lock.RunWith(run.name(), set.tags()));
                Plan made = OutingPlanner.plan(problem.withLocks(locks), effort, PlanProgress.silent());
                if (made.brokenLocks().size() <= plan.brokenLocks().size()) {
                    return Optional.of(made);
                }
            }
        }
        return Optional.empty();
    }

    private boolean isFree(RunWanted run) {
        return problem.locks().stream()
                .noneMatch(
                        lock -> lock instanceof Lock.RunWith with && with.run().equals(run.name())
                                || lock instanceof Lock.RunNot not && not.run().equals(run.name()));
    }
}
