package fettle.planner.plan;

import fettle.planner.problem.Goal;
import java.util.List;
import java.util.Optional;

/**
 * What to do when.
 *
 * @param charges charges and discharges by start
 * @param runs runs by start
 * @param goals what each goal comes to, most important first
 * @param brokenLocks locks that could not be kept, in words
 * @param effort what the search took
 */
public record Plan(
        List<ChargeJob> charges,
        List<PlannedRun> runs,
        List<GoalValue> goals,
        List<String> brokenLocks,
        SearchEffort effort) {
    public Plan {
        charges = List.copyOf(charges);
        runs = List.copyOf(runs);
        goals = List.copyOf(goals);
        brokenLocks = List.copyOf(brokenLocks);
    }

    /** Whether every goal is proven best. */
    public boolean provenBest() {
        return goals.stream().allMatch(GoalValue::provenBest);
    }

    public Optional<GoalValue> goal(Goal goal) {
        return goals.stream().filter(value -> value.goal() == goal).findFirst();
    }

    public Optional<PlannedRun> run(String name) {
        return runs.stream().filter(run -> run.run().equals(name)).findFirst();
    }

    /** Whether a pack is charged or run at all. */
    public boolean uses(String tag) {
        return runs.stream().anyMatch(run -> run.packs().contains(tag))
                || charges.stream().anyMatch(job -> job.packs().contains(tag));
    }
}
