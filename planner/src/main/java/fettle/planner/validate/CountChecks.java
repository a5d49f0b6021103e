package fettle.planner.validate;

import fettle.planner.plan.ChargeJob;
import fettle.planner.plan.GoalValue;
import fettle.planner.plan.Plan;
import fettle.planner.plan.PlannedRun;
import fettle.planner.problem.Goal;
import fettle.planner.problem.Lock;
import fettle.planner.problem.OutingProblem;
import fettle.planner.problem.Place;
import fettle.planner.problem.PlanPack;
import fettle.planner.problem.RunWanted;
import java.util.List;
import java.util.Set;

/** Checks that locks are kept, or told as broken, and that every goal comes to what the plan says. */
final class CountChecks {
    private final OutingProblem problem;
    private final Plan plan;
    private final List<Violation> found;

    CountChecks(OutingProblem problem, Plan plan, List<Violation> found) {
        this.problem = problem;
        this.plan = plan;
        this.found = found;
    }

    void check() {
        for (Lock lock : problem.locks()) {
            if (!kept(lock) && !plan.brokenLocks().contains(lock.label())) {
                found.add(new Violation("lock", lock.label() + " is not kept, and the plan does not say so."));
            }
        }
        for (GoalValue value : plan.goals()) {
            long count = count(value.goal());
            if (count != value.count()) {
                found.add(new Violation(
                        "count", value.goal().label() + " comes to " + count + ", the plan says " + value.count()));
            }
        }
    }

    private boolean kept(Lock lock) {
        if (lock instanceof Lock.RunWith with) {
            return plan.run(with.run())
                    .filter(run -> Set.copyOf(run.packs()).equals(Set.copyOf(with.packs())))
                    .isPresent();
        } else if (lock instanceof Lock.RunAt at) {
            return plan.run(at.run())
                    .filter(run -> run.startMinute() == at.startMinute())
                    .isPresent();
        } else if (lock instanceof Lock.RunNot not) {
            return plan.run(not.run()).isEmpty();
        } else if (lock instanceof Lock.ChargeAt at) {
            return plan.charges().stream()
                    .anyMatch(job -> job.way().equals(at.way())
                            && job.startMinute() == at.startMinute()
                            && job.target() == at.target());
        }
        return !plan.uses(((Lock.PackNot) lock).pack());
    }

    private long count(Goal goal) {
        return switch (goal) {
            case MOST_VALUABLE_RUNS ->
                problem.runs().stream()
                        .filter(run -> plan.run(run.name()).isEmpty())
                        .mapToLong(RunWanted::value)
                        .sum();
            case STORAGE_IN_TIME ->
                counted().stream()
                        .mapToLong(pack -> timeline(pack).storageUnits())
                        .sum();
            case FEWEST_HOURS_AT_FULL ->
                counted().stream()
                        .mapToLong(pack -> timeline(pack).fullMinutes() * pack.fullWeight())
                        .sum();
            case LEAST_STRESS ->
                plan.charges().stream()
                        .mapToLong(job -> problem.means().way(job.way()).stress())
                        .sum();
            case LEAST_FIELD_ENERGY ->
                plan.charges().stream().mapToLong(this::fieldWattHours).sum();
            case EARLIEST_FINISH ->
                Math.max(
                        plan.charges().stream()
                                .mapToLong(ChargeJob::endMinute)
                                .max()
                                .orElse(0),
                        plan.runs().stream()
                                .mapToLong(PlannedRun::endMinute)
                                .max()
                                .orElse(0));
        };
    }

    private List<PlanPack> counted() {
        return problem.packs().stream()
                .filter(pack -> !pack.barred() && !problem.locks().contains(new Lock.PackNot(pack.tag())))
                .toList();
    }

    private PackTimeline timeline(PlanPack pack) {
        return new PackTimeline(problem, plan, pack);
    }

    private long fieldWattHours(ChargeJob job) {
        var charger = problem.means().charger(problem.means().port(job.port()).charger());
        if (problem.means().source(charger.source()).place() != Place.FIELD) {
            return 0;
        }
        CurveWalk walk = new CurveWalk(problem.means().way(job.way()).curve(), job.fromFraction(), job.toFraction());
        return (long) Math.ceil(walk.wattHours() / charger.efficiency() - 1e-9);
    }
}
