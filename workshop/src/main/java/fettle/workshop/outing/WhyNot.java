package fettle.workshop.outing;

import fettle.engine.outing.KeptPlan;
import fettle.engine.outing.KeptPlan.PlannedCharge;
import fettle.engine.outing.KeptPlan.PlannedRun;
import fettle.planner.plan.Plan;
import fettle.planner.solve.Effort;
import fettle.planner.solve.OutingPlanner;
import fettle.planner.solve.PlanProgress;
import fettle.planner.why.Explanation;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Why a pack or a run is planned as it is, or not at all: the constraint that binds. */
public final class WhyNot {
    private static final double SECONDS = 1;

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

    /** Why a pack that can be offered has nothing to do, and the smallest changes that would give it something. */
    public static List<String> pack(PlanningCase made, String tag) {
        PackAtHand hand = made.kit().packs().stream()
                .filter(one -> one.tag().equals(tag))
                .findFirst()
                .orElseThrow();
        if (!hand.usable()) {
            return List.of(tag + " is not planned: " + hand.leftOutBecause() + ".");
        }
        boolean fits = made.problem().runs().stream()
                .anyMatch(run -> run.fits().stream().anyMatch(set -> set.tags().contains(tag)));
        return fits ? told(made, why -> why.pack(tag)) : misfits(made, hand);
    }

    /** Why a run is left out, and the smallest changes that would make it possible. */
    public static List<String> run(PlanningCase made, String name) {
        boolean wanted =
                made.problem().runs().stream().anyMatch(run -> run.name().equals(name));
        if (wanted) {
            return told(made, why -> why.run(name));
        }
        List<String> remarks = made.remarks().stream()
                .filter(remark -> remark.startsWith(name))
                .toList();
        return remarks.isEmpty() ? List.of(name + " is over.") : remarks;
    }

    private static List<String> told(PlanningCase made, Function<fettle.planner.why.WhyNot, Explanation> question) {
        Plan plan = OutingPlanner.plan(made.problem(), Effort.seconds(SECONDS), PlanProgress.silent());
        DayTimes day = new DayTimes(made.outing().date(), made.outing().zoneId());
        Explanation explanation = question.apply(new fettle.planner.why.WhyNot(
                made.problem(), plan, minute -> day.write(made.clock().at(minute))));
        List<String> told = new ArrayList<>(List.of(explanation.reason()));
        explanation.changes().forEach(change -> told.add("It would be possible: " + change.sentence() + "."));
        return told;
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

    private static String span(DayTimes day, Instant from, Instant until) {
        return day.write(from, until);
    }
}
