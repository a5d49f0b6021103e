package fettle.planner.validate;

import fettle.engine.pack.Standing;
import fettle.planner.plan.ChargeJob;
import fettle.planner.plan.Plan;
import fettle.planner.plan.PlannedRun;
import fettle.planner.problem.OutingProblem;
import fettle.planner.problem.PackSet;
import fettle.planner.problem.PlanPack;
import fettle.planner.problem.Target;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/** Follows one pack through a plan: its charge, its waits, one thing at a time, once used between charges. */
final class PackChecks {
    private final OutingProblem problem;
    private final Plan plan;
    private final PlanPack pack;
    private final List<Violation> found;
    private double charge;
    private int busyUntil;
    private int usableFrom;
    private int chargeableFrom;
    private boolean usedSinceCharge;
    private boolean stored;

    PackChecks(OutingProblem problem, Plan plan, PlanPack pack, List<Violation> found) {
        this.problem = problem;
        this.plan = plan;
        this.pack = pack;
        this.found = found;
        charge = pack.chargeFraction();
        busyUntil = pack.times().freeAtMinute();
        usableFrom = busyUntil;
        chargeableFrom = busyUntil;
    }

    void check() {
        List<Object> events = new ArrayList<>();
        plan.charges().stream().filter(job -> job.packs().contains(pack.tag())).forEach(events::add);
        plan.runs().stream().filter(run -> run.packs().contains(pack.tag())).forEach(events::add);
        events.sort(Comparator.comparingInt(PackChecks::start));
        boolean barred = pack.standing() == Standing.GROUNDED || pack.standing() == Standing.RETIRED;
        if (barred && !events.isEmpty()) {
            add("standing", "is " + pack.standing().word() + " and must not be planned.");
        }
        for (Object event : events) {
            if (start(event) < busyUntil) {
                add("pack", "is in two places, or not free yet, at minute " + start(event));
            }
            if (event instanceof ChargeJob job) {
                follow(job);
            } else if (event instanceof PlannedRun run) {
                follow(run);
            }
        }
    }

    private static int start(Object event) {
        return event instanceof ChargeJob job ? job.startMinute() : ((PlannedRun) event).startMinute();
    }

    private void follow(ChargeJob job) {
        if (job.startMinute() < chargeableFrom) {
            add("cooling", "is charged at minute " + job.startMinute() + ", before it is cool or rested.");
        }
        double others = job.packs().size() > 1 ? problem.means().way(job.way()).alikeWithin() : 0;
        if (job.fromFraction() > charge + CurveWalk.SAME || charge - job.fromFraction() > others + CurveWalk.SAME) {
            add("charge", "is at " + charge + " but " + job.way() + " starts from " + job.fromFraction());
        }
        double target = job.target() == Target.FULL
                ? pack.levels().fullFraction()
                : pack.levels().storageTarget();
        if (Math.abs(job.toFraction() - target) > CurveWalk.SAME) {
            add("target", job.way() + " ends at " + job.toFraction() + ", wanted " + target);
        }
        charge = job.toFraction();
        usedSinceCharge = false;
        stored = job.target() == Target.STORAGE;
        busyUntil = job.endMinute();
        usableFrom = job.endMinute() + pack.times().restMinutes();
        chargeableFrom = usableFrom;
    }

    private void follow(PlannedRun run) {
        if (run.startMinute() < usableFrom) {
            add("rest", "is used at minute " + run.startMinute() + ", before it has rested.");
        }
        if (usedSinceCharge || stored) {
            add("charge", "runs " + run.run() + " without being charged to full before.");
        }
        double takes = problem.runs().stream()
                .filter(wanted -> wanted.name().equals(run.run()))
                .flatMap(wanted -> wanted.fits().stream())
                .filter(set -> Set.copyOf(set.tags()).equals(Set.copyOf(run.packs())))
                .flatMap(set -> set.takes().stream())
                .filter(take -> take.pack().equals(pack.tag()))
                .mapToDouble(PackSet.Take::fraction)
                .findFirst()
                .orElse(1);
        charge -= takes;
        if (charge < pack.levels().reserveFraction() - CurveWalk.SAME) {
            add("reserve", "is left at " + charge + " by " + run.run());
        }
        usedSinceCharge = true;
        stored = false;
        busyUntil = run.endMinute();
        usableFrom = run.endMinute();
        chargeableFrom = run.endMinute() + pack.times().coolMinutes();
    }

    private void add(String rule, String sentence) {
        found.add(new Violation(rule, pack.tag() + " " + sentence));
    }
}
