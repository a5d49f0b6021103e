package fettle.planner.validate;

import fettle.planner.plan.ChargeJob;
import fettle.planner.plan.Plan;
import fettle.planner.plan.PlannedRun;
import fettle.planner.problem.OutingProblem;
import fettle.planner.problem.PackSet;
import fettle.planner.problem.PlanPack;
import java.util.Optional;
import java.util.Set;

/** Charge and occupation of one pack at every minute of a plan. */
final class PackTimeline {
    private final PlanPack pack;
    private final double[] charge;
    private final boolean[] busy;
    private int lastEnd = -1;

    PackTimeline(OutingProblem problem, Plan plan, PlanPack pack) {
        this.pack = pack;
        int horizon = problem.time().horizonMinutes();
        charge = new double[horizon + 1];
        busy = new boolean[horizon + 1];
        double now = pack.chargeFraction();
        for (int minute = 0; minute <= horizon; minute++) {
            now = after(problem, plan, minute, now);
            charge[minute] = now;
            int at = minute;
            busy[minute] = plan.charges().stream()
                            .anyMatch(job ->
                                    job.packs().contains(pack.tag()) && job.startMinute() <= at && at < job.endMinute())
                    || plan.runs().stream()
                            .anyMatch(run -> run.packs().contains(pack.tag())
                                    && run.startMinute() <= at
                                    && at < run.endMinute());
        }
    }

    private double after(OutingProblem problem, Plan plan, int minute, double now) {
        Optional<ChargeJob> job = plan.charges().stream()
                .filter(one -> one.packs().contains(pack.tag()) && one.endMinute() == minute)
                .findFirst();
        Optional<PlannedRun> run = plan.runs().stream()
                .filter(one -> one.packs().contains(pack.tag()) && one.endMinute() == minute)
                .findFirst();
        if (job.isPresent() || run.isPresent()) {
            lastEnd = minute;
        }
        double takes = run.map(one -> takes(problem, one)).orElse(0.0);
        return job.map(ChargeJob::toFraction).orElse(now) - takes;
    }

    private double takes(OutingProblem problem, PlannedRun run) {
        return problem.runs().stream()
                .filter(wanted -> wanted.name().equals(run.run()))
                .flatMap(wanted -> wanted.fits().stream())
                .filter(set -> Set.copyOf(set.tags()).equals(Set.copyOf(run.packs())))
                .flatMap(set -> set.takes().stream())
                .filter(take -> take.pack().equals(pack.tag()))
                .mapToDouble(PackSet.Take::fraction)
                .sum();
    }

    /** Minutes nearer full than the storage band while neither charged nor used. */
    long fullMinutes() {
        double border = (pack.levels().storageHigh() + pack.levels().fullFraction()) / 2;
        long minutes = 0;
        for (int minute = 0; minute + 1 < charge.length; minute++) {
            minutes += !busy[minute] && charge[minute] > border ? 1 : 0;
        }
        return minutes;
    }

    /** 0 in its storage band in time, 1 late, 2 not at the end. */
    int storageUnits() {
        double end = charge[charge.length - 1];
        if (end < pack.levels().storageLow() - 1e-9 || end > pack.levels().storageHigh() + 1e-9) {
            return 2;
        }
        return lastEnd > pack.times().storageByMinute() ? 1 : 0;
    }
}
