package fettle.planner.why;

import fettle.planner.plan.GoalValue;
import fettle.planner.plan.Plan;
import fettle.planner.problem.Lock;
import fettle.planner.problem.OutingProblem;
import fettle.planner.problem.PackSet;
import fettle.planner.problem.PlanPack;
import fettle.planner.problem.RunWanted;
import fettle.planner.solve.Effort;
import fettle.planner.solve.OutingPlanner;
import fettle.planner.solve.PlanProgress;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Answers "why not P07?" and "why not that run?" by planning the day again with small differences. Repeatable: no clock is asked.
 */
public final class WhyNot {
    private static final Effort QUICK = Effort.rounds(40);
    private static final Effort WHOLE_DAY = Effort.rounds(150);
    private static final int MOST_CHANGES = 3;

    private final OutingProblem problem;
    private final Plan plan;
    private final MinuteText text;

    /**
     * @param plan the plan made for the problem
     * @param text tells minutes
     */
    public WhyNot(OutingProblem problem, Plan plan, MinuteText text) {
        this.problem = problem;
        this.plan = plan;
        this.text = text;
    }

    /** Why a pack makes no run. */
    public Explanation pack(String tag) {
        PlanPack pack = problem.packs().stream()
                .filter(one -> one.tag().equals(tag))
                .findFirst()
                .orElseThrow();
        if (pack.barred()) {
            return new Explanation(tag, tag + " is " + pack.standing().word() + " and is never planned.", List.of());
        }
        if (problem.locks().contains(new Lock.PackNot(tag))) {
            return new Explanation(tag, tag + " is locked out of this plan.", List.of());
        }
        List<RunWanted> runs = problem.runs().stream()
                .filter(run -> run.fits().stream().anyMatch(set -> set.tags().contains(tag)))
                .toList();
        if (runs.isEmpty()) {
            return new Explanation(tag, tag + " fits none of the runs wanted.", List.of());
        }
        OutingProblem alone = problem.withLocks(List.of()).withRuns(only(runs, tag));
        Predicate<Plan> flies =
                result -> result.runs().stream().anyMatch(run -> run.packs().contains(tag));
        if (!flies.test(plan(alone, QUICK))) {
            return impossible(
                    tag, tag + " cannot be ready for any run it fits, even with all else left out", alone, flies);
        }
        return new PackTrial(problem, plan, tag, WHOLE_DAY).explain(runs);
    }

    /** The runs with the sets alone that a pack is in. */
    private static List<RunWanted> only(List<RunWanted> runs, String tag) {
        return runs.stream()
                .map(run -> new RunWanted(
                        run.name(),
                        run.craft(),
                        run.value(),
                        run.times(),
                        run.fits().stream()
                                .filter(set -> set.tags().contains(tag))
                                .toList()))
                .toList();
    }

    /** Why a run is not made. */
    public Explanation run(String name) {
        RunWanted run = problem.runs().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
        if (problem.locks().contains(new Lock.RunNot(name))) {
            return new Explanation(name, name + " is locked out of this plan.", List.of());
        }
        if (run.fits().stream().allMatch(this::isOut)) {
            return new Explanation(
                    name,
                    name + " has no pack that fits, or all that fit are grounded, retired or locked out.",
                    List.of());
        }
        Predicate<Plan> made = result -> result.run(name).isPresent();
        OutingProblem alone = problem.withLocks(List.of()).withRuns(List.of(run));
        if (!made.test(plan(alone, QUICK))) {
            return impossible(name, name + " cannot be made, even with all other runs left out", alone, made);
        }
        return crowdedOut(run);
    }

    private boolean isOut(PackSet set) {
        return set.tags().stream()
                .anyMatch(tag -> problem.locks().contains(new Lock.PackNot(tag))
                        || problem.packs().stream().anyMatch(pack -> pack.tag().equals(tag) && pack.barred()));
    }

    /** Possible by itself: what must give way, and what would make room for all. */
    private Explanation crowdedOut(RunWanted run) {
        List<RunWanted> runs = new ArrayList<>(problem.runs());
        int dearest = problem.runs().stream().mapToInt(RunWanted::value).sum() + 1;
        runs.set(problem.runs().indexOf(run), new RunWanted(run.name(), run.craft(), dearest, run.times(), run.fits()));
        Plan forced = plan(problem.withRuns(runs), WHOLE_DAY);
        List<String> lost = plan.runs().stream()
                .map(made -> made.run())
                .filter(name -> forced.run(name).isEmpty())
                .toList();
        String reason = forced.run(run.name()).isEmpty()
                ? run.name() + " clashes with a choice that is locked."
                : lost.isEmpty()
                        ? run.name() + " fits beside all runs of this plan; plan again for longer."
                        : run.name() + " (worth " + run.value() + ") could only be made instead of "
                                + String.join(" and ", lost) + ".";
        Predicate<Plan> all = result -> result.run(run.name()).isPresent()
                && plan.runs().stream().allMatch(made -> result.run(made.run()).isPresent());
        return new Explanation(run.name(), reason, changes(problem, all, WHOLE_DAY));
    }

    /** Why locks of a plan are broken: one explanation for each. */
    public List<Explanation> brokenLocks() {
        return plan.brokenLocks().stream()
                .map(label -> impossible(
                        label,
                        "the lock \"" + label + "\" cannot be kept",
                        problem,
                        result -> !result.brokenLocks().contains(label)))
                .toList();
    }

    private Explanation impossible(String subject, String what, OutingProblem day, Predicate<Plan> wanted) {
        List<Change> changes = changes(day, wanted, QUICK);
        String reason = changes.isEmpty()
                ? what + ", and no single change that was tried helps."
                : what + ": what binds is "
                        + String.join(
                                ", or ",
                                changes.stream().map(Change::limit).distinct().toList())
                        + ".";
        return new Explanation(subject, reason, changes);
    }

    /** The smallest change of every limit that makes it possible, a few at most. */
    private List<Change> changes(OutingProblem day, Predicate<Plan> wanted, Effort effort) {
        List<Change> found = new ArrayList<>();
        for (Change change : new Changes(day, text).bySize()) {
            boolean known = found.stream().anyMatch(other -> other.limit().equals(change.limit()));
            if (!known && found.size() < MOST_CHANGES && wanted.test(plan(change.problem(), effort))) {
                found.add(change);
            }
        }
        return found;
    }

    private static Plan plan(OutingProblem day, Effort effort) {
        return OutingPlanner.plan(day, effort, PlanProgress.silent());
    }

    /** The first goal in which one plan is worse than another, if any. */
    static Optional<GoalValue> worseIn(Plan one, Plan other) {
        for (int i = 0; i < one.goals().size(); i++) {
            long mine = one.goals().get(i).units();
            long its = other.goals().get(i).units();
            if (mine != its) {
                return mine > its ? Optional.of(one.goals().get(i)) : Optional.empty();
            }
        }
        return Optional.empty();
    }
}
