package fettle.bench.outing;

import fettle.planner.plan.ChargeJob;
import fettle.planner.plan.GoalValue;
import fettle.planner.plan.Plan;
import fettle.planner.plan.PlannedRun;
import fettle.planner.plan.SearchEffort;
import fettle.planner.problem.GoalSetting;
import fettle.planner.problem.OutingProblem;
import fettle.planner.problem.PlanPack;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Counts value left out, missed storage and minutes at full of any plan. */
record Tally(long lostValue, long storageUnits, long fullMinutes) {
    static Tally of(OutingProblem problem, List<ChargeJob> charges, List<PlannedRun> runs) {
        long lost = problem.runs().stream()
                .filter(run -> runs.stream().noneMatch(made -> made.run().equals(run.name())))
                .mapToLong(run -> run.value())
                .sum();
        long storage = 0;
        long full = 0;
        for (PlanPack pack : problem.packs()) {
            List<int[]> events = new ArrayList<>();
            charges.stream()
                    .filter(job -> job.packs().contains(pack.tag()))
                    .forEach(job ->
                            events.add(new int[] {job.startMinute(), job.endMinute(), job.toFraction() > 0.8 ? 1 : 2}));
            runs.stream()
                    .filter(run -> run.packs().contains(pack.tag()))
                    .forEach(run ->
                            events.add(new int[] {run.startMinute(), run.endMinute(), takes(problem, run, pack)}));
            events.sort(Comparator.comparingInt(event -> event[0]));
            int since = 0;
            int state = pack.stored(pack.chargeFraction()) ? 2 : 0;
            for (int[] event : events) {
                full += state == 1 ? event[0] - since : 0;
                since = event[1];
                state = event[2];
            }
            full += state == 1 ? problem.time().horizonMinutes() - since : 0;
            storage += state != 2 ? 2 : since > pack.times().storageByMinute() ? 1 : 0;
        }
        return new Tally(lost, storage, full);
    }

    /** 2 where the run leaves the pack in its storage band, else 0. */
    private static int takes(OutingProblem problem, PlannedRun run, PlanPack pack) {
        double left = 1
                - problem.runs().stream()
                        .filter(wanted -> wanted.name().equals(run.run()))
                        .flatMap(wanted -> wanted.fits().stream())
                        .flatMap(set -> set.takes().stream())
                        .filter(take -> take.pack().equals(pack.tag()))
                        .mapToDouble(take -> take.fraction())
                        .findFirst()
                        .orElse(0);
        return pack.stored(left) ? 2 : 0;
    }

    /** A plan without counts, for the validator. */
    static Plan plan(List<ChargeJob> charges, List<PlannedRun> runs) {
        return new Plan(charges, runs, List.<GoalValue>of(), List.of(), new SearchEffort(0, 0, 0, false));
    }

    long fullUnits(OutingProblem problem) {
        GoalSetting setting = problem.goals().get(2);
        return setting.units(fullMinutes);
    }
}
