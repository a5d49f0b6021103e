package fettle.workshop;

import fettle.engine.outing.KeptPlan;
import fettle.engine.outing.Outing;
import fettle.engine.units.InputException;
import fettle.workshop.outing.DayTimes;
import fettle.workshop.outing.PlanningCase;
import fettle.workshop.outing.WhyNot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Answers "why not P07?": what the plan does with it, or the constraint that keeps it out. */
final class Reasons {
    private final OutingState state;
    private final Supplier<PlanningCase> problem;

    Reasons(OutingState state, Supplier<PlanningCase> problem) {
        this.state = state;
        this.problem = problem;
    }

    List<String> of(String subject) {
        KeptPlan plan = state.plan();
        if (plan == null) {
            throw new InputException("what", state.outing().name() + " has no plan yet. Make one: outing plan.");
        }
        DayTimes day = Outings.times(state.outing());
        Optional<String> pack = state.outing().packs().stream()
                .filter(tag -> tag.equalsIgnoreCase(subject))
                .findFirst();
        if (pack.isPresent()) {
            List<String> uses = WhyNot.uses(plan, pack.get(), day);
            return uses.isEmpty() ? WhyNot.pack(problem.get(), pack.get()) : uses;
        }
        String run = state.outing().runs().stream()
                .map(Outing.NamedRun::name)
                .filter(name -> name.equalsIgnoreCase(subject))
                .findFirst()
                .orElseThrow(() -> new InputException(
                        "what",
                        "\"" + subject + "\" is neither a pack nor a run of "
                                + state.outing().name() + ". Name one of them, e.g. " + example() + "."));
        List<String> planned = new ArrayList<>(WhyNot.run(plan, run, day));
        return planned.isEmpty() ? WhyNot.run(problem.get(), run) : planned;
    }

    private String example() {
        return state.outing().packs().stream().findFirst().orElse("P07");
    }
}
