package fettle.planner.validate;

import fettle.planner.plan.Plan;
import fettle.planner.plan.PlannedRun;
import fettle.planner.problem.OutingProblem;
import fettle.planner.problem.Place;
import fettle.planner.problem.RunWanted;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Checks runs: wanted, once, in their times, with packs that fit, one at a time for every craft with its gap. */
final class RunChecks {
    private final OutingProblem problem;
    private final Plan plan;
    private final List<Violation> found;

    RunChecks(OutingProblem problem, Plan plan, List<Violation> found) {
        this.problem = problem;
        this.plan = plan;
        this.found = found;
    }

    void check() {
        Set<String> seen = new HashSet<>();
        for (PlannedRun run : plan.runs()) {
            if (!seen.add(run.run())) {
                add("run", run.run() + " is made twice.");
            }
            Optional<RunWanted> wanted = problem.runs().stream()
                    .filter(one -> one.name().equals(run.run()))
                    .findFirst();
            if (wanted.isEmpty()) {
                add("run", run.run() + " is not wanted.");
            } else {
                check(run, wanted.get());
            }
        }
    }

    private void check(PlannedRun run, RunWanted wanted) {
        RunWanted.Times times = wanted.times();
        if (run.startMinute() < times.earliestStart() || run.startMinute() > times.latestStart()) {
            add("window", run.run() + " starts at minute " + run.startMinute() + ", outside its times.");
        }
        if (run.endMinute() - run.startMinute() != times.duration()) {
            add("duration", run.run() + " lasts " + (run.endMinute() - run.startMinute()) + " min.");
        }
        if (run.startMinute() % problem.time().stepMinutes() != 0) {
            add("step", run.run() + " starts at minute " + run.startMinute() + ", not on a step.");
        }
        if (wanted.fits().stream().noneMatch(set -> Set.copyOf(set.tags()).equals(Set.copyOf(run.packs())))) {
            add("fit", run.run() + ": " + run.packs() + " do not fit.");
        }
        if (problem.presence().stream()
                .noneMatch(here -> here.place() == Place.FIELD
                        && here.span().fromMinute() <= run.startMinute()
                        && run.endMinute() <= here.span().toMinute())) {
            add("presence", run.run() + " at minute " + run.startMinute() + ": nobody is at the field throughout.");
        }
        for (PlannedRun other : plan.runs()) {
            boolean later = other.craft().equals(run.craft())
                    && (other.startMinute() > run.startMinute()
                            || other.startMinute() == run.startMinute() && !other.equals(run));
            if (later && other.startMinute() < run.endMinute() + times.gapAfter()) {
                add("craft", run.craft() + " is in two runs or has too short a gap: " + run.run() + ", " + other.run());
            }
        }
    }

    private void add(String rule, String sentence) {
        found.add(new Violation(rule, sentence));
    }
}
