package fettle.workshop;

import fettle.engine.outing.Happened;
import fettle.engine.outing.KeptPlan;
import fettle.engine.outing.Outing;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What to do now and next on an outing.
 *
 * @param outing its name
 * @param now the moment it is told for
 * @param going what goes on, the first to end first
 * @param next what is planned and not begun, the soonest first
 * @param toPutBack runs that have ended and of which it is not noted what was put back
 */
public record NowNext(String outing, Instant now, List<Step> going, List<Step> next, List<Step> toPutBack) {
    public NowNext {
        going = List.copyOf(going);
        next = List.copyOf(next);
        toPutBack = List.copyOf(toPutBack);
    }

    /**
     * One planned run or charge.
     *
     * @param kind run or charge
     * @param name its name, to begin and end it by
     * @param what what to do, in words
     * @param packs tags of its packs
     * @param begins when it begins, or began
     * @param ends when it is planned to end
     * @param caution what to mind; empty if nothing of its own
     */
    public record Step(
            Happened.Kind kind,
            String name,
            String what,
            List<String> packs,
            Instant begins,
            Instant ends,
            String caution) {
        public Step {
            packs = List.copyOf(packs);
        }
    }

    private static final String ATTEND =
            "Stay with it while it charges or discharges; the maker's instructions come first.";

    static NowNext of(OutingState state, Instant now) {
        List<Step> steps = steps(state.plan());
        Outing outing = state.outing();
        List<Step> going = new ArrayList<>();
        List<Step> next = new ArrayList<>();
        List<Step> toPutBack = new ArrayList<>();
        for (Step step : steps) {
            Optional<Happened> done = outing.happened().stream()
                    .filter(one -> one.isOf(step.kind(), step.name()))
                    .findFirst();
            if (done.isEmpty()) {
                next.add(step);
            } else if (done.get().ended() == null) {
                going.add(step);
            }
        }
        for (Happened done : outing.happened()) {
            boolean open = done.kind() == Happened.Kind.RUN && done.ended() != null && done.putBackCoulombs() == null;
            if (open) {
                toPutBack.add(ended(done, now));
            } else if (done.ended() == null
                    && steps.stream().noneMatch(step -> step.name().equals(done.subject()))) {
                going.add(ended(done, now));
            }
        }
        going.sort(Comparator.comparing(Step::ends));
        next.sort(Comparator.comparing(Step::begins));
        return new NowNext(outing.name(), now, going, next, toPutBack);
    }

    private static Step ended(Happened done, Instant now) {
        Instant began = done.began() == null ? now : done.began();
        Instant ended = done.ended() == null ? now : done.ended();
        return new Step(done.kind(), done.subject(), done.subject(), done.packs(), began, ended, "");
    }

    private static List<Step> steps(@Nullable KeptPlan plan) {
        List<Step> steps = new ArrayList<>();
        if (plan == null) {
            return steps;
        }
        for (KeptPlan.PlannedCharge charge : plan.charges()) {
            steps.add(new Step(
                    Happened.Kind.CHARGE,
                    charge.way(),
                    String.join(" and ", charge.packs()) + " " + charge.target() + " on " + charge.port(),
                    charge.packs(),
                    charge.begins(),
                    charge.ends(),
                    ATTEND));
        }
        for (KeptPlan.PlannedRun run : plan.runs()) {
            steps.add(new Step(
                    Happened.Kind.RUN,
                    run.run(),
                    run.run() + " with " + String.join(" and ", run.packs()),
                    run.packs(),
                    run.begins(),
                    run.ends(),
                    ""));
        }
        return steps;
    }
}
