package fettle.workshop.outing;

import fettle.engine.outing.KeptPlan;
import fettle.engine.outing.KeptPlan.PlannedCharge;
import fettle.engine.outing.KeptPlan.PlannedRun;
import fettle.planner.plan.GoalValue;
import fettle.planner.plan.Plan;
import fettle.planner.problem.Lock;
import fettle.planner.solve.Effort;
import fettle.planner.solve.OutingPlanner;
import fettle.planner.solve.PlanProgress;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Why a pack or a run is planned as it is, or not at all: the constraint that binds. */
public final class WhyNot {
    private static final int MOST_TRIES = 4;
    private static final double SECONDS_EACH = 0.5;

    private WhyNot() {}

    /** What a kept plan does with a pack, a line each; empty if nothing. */
    public static List<String> uses(KeptPlan plan, String tag, DayTimes day) {
        List<String> uses = new ArrayList<>();
        for (PlannedRun run : plan.runs()) {
            if (run.packs().contains(tag)) {
                uses.add(tag + " flies " + run.run() + " at " + day.write(run.begins()) + ".");
            }
        }
        for (PlannedCharge charge : plan.charges()) {
            if (charge.packs().contains(tag)) {
                uses.add(tag + " is charged " + charge.target() + " on " + charge.port() + " from "
                        + day.write(charge.begins()) + " to " + day.write(charge.ends()) + ".");
            }
        }
        return uses;
    }

    /** When a run is planned; empty if it is not. */
    public static List<String> run(KeptPlan plan, String name, DayTimes day) {
        return plan.runs().stream()
                .filter(run -> run.run().equalsIgnoreCase(name))
                .map(run -> run.run() + " is planned with " + String.join(" and ", run.packs()) + " at "
                        + span(day, run.begins(), run.ends()) + ".")
                .toList();
    }

    /** Why a pack that can be offered has nothing to do. */
    public static List<String> pack(PlanningCase made, String tag) {
        PackAtHand hand = made.kit().packs().stream()
                .filter(one -> one.tag().equals(tag))
                .findFirst()
                .orElseThrow();
        if (!hand.usable()) {
            return List.of(tag + " is not planned: " + hand.leftOutBecause() + ".");
        }
        if (made.problem().locks().contains(new Lock.PackNot(tag))) {
            return List.of(tag + " is not planned: it was settled so (not " + tag + ").");
        }
        List<Lock.RunWith> tries = made.problem().runs().stream()
                .flatMap(run -> run.fits().stream()
                        .filter(set -> set.tags().contains(tag))
                        .map(set -> new Lock.RunWith(run.name(), set.tags())))
                .limit(MOST_TRIES)
                .toList();
        return tries.isEmpty() ? misfits(made, hand) : List.of(tag + " is not needed. " + compared(made, tries));
    }

    /** Why a run is left out. */
    public static List<String> run(PlanningCase made, String name) {
        List<Lock.RunWith> tries = made.problem().runs().stream()
                .filter(run -> run.name().equals(name))
                .flatMap(run -> run.fits().stream().map(set -> new Lock.RunWith(run.name(), set.tags())))
                .limit(MOST_TRIES)
                .toList();
        if (tries.isEmpty()) {
            List<String> told = made.remarks().stream()
                    .filter(remark -> remark.startsWith(name))
                    .toList();
            return told.isEmpty() ? List.of(name + " is over or was settled to be left out.") : told;
        }
        return List.of(name + " is left out. " + compared(made, tries));
    }

    private static List<String> misfits(PlanningCase made, PackAtHand hand) {
        List<String> reasons = made.outing().wishes().stream()
                .map(wish -> made.kit().craft(wish.craft()))
                .flatMap(Optional::stream)
                .distinct()
                .map(craft -> PackFit.misfit(craft, hand.pack()))
                .flatMap(Optional::stream)
                .toList();
        return List.of(hand.tag() + " fits no run that is wanted"
                + (reasons.isEmpty() ? "." : ": " + String.join("; ", reasons) + "."));
    }

    /** Plans again with each choice forced, and tells what that costs. */
    private static String compared(PlanningCase made, List<Lock.RunWith> tries) {
        Plan free = plan(made, null);
        List<String> costs = new ArrayList<>();
        for (Lock.RunWith lock : tries) {
            Plan forced = plan(made, lock);
            if (forced.brokenLocks().isEmpty()) {
                costs.add("With " + lock.label() + ", " + cost(made, free, forced) + ".");
            }
        }
        return costs.isEmpty()
                ? "Nothing that was tried makes it possible: no port, power, attended time or charge is left for "
                        + tries.get(0).label() + " within its times."
                : costs.get(0);
    }

    private static Plan plan(PlanningCase made, Lock.@Nullable RunWith lock) {
        List<Lock> locks = new ArrayList<>(made.problem().locks());
        if (lock != null) {
            locks.removeIf(
                    other -> other instanceof Lock.RunWith with && with.run().equals(lock.run())
                            || other instanceof Lock.RunNot not && not.run().equals(lock.run()));
            locks.add(lock);
        }
        return OutingPlanner.plan(made.problem().withLocks(locks), Effort.seconds(SECONDS_EACH), PlanProgress.silent());
    }

    private static String cost(PlanningCase made, Plan free, Plan forced) {
        for (GoalValue value : free.goals()) {
            GoalValue other = forced.goal(value.goal()).orElse(value);
            if (other.units() != value.units()) {
                boolean worse = other.units() > value.units();
                return "\"" + value.goal().label() + "\" comes out " + (worse ? "worse" : "better") + ": "
                        + PlanKeeper.came(made, other) + " instead of " + PlanKeeper.came(made, value);
            }
        }
        return "no goal comes out differently: either is as good";
    }

    private static String span(DayTimes day, Instant from, Instant until) {
        return day.write(from, until);
    }
}
