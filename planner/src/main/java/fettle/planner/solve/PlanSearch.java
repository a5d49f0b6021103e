package fettle.planner.solve;

import fettle.planner.plan.GoalValue;
import fettle.planner.plan.Plan;
import fettle.planner.plan.SearchEffort;
import fettle.planner.problem.GoalSetting;
import java.util.ArrayList;
import java.util.List;

/** One search, from the first plan to the last. */
final class PlanSearch {
    private static final double SECONDS_BETWEEN_WORDS = 0.2;

    private final Model model;
    private final Effort effort;
    private final PlanProgress progress;
    private final long began = System.nanoTime();
    private final Improver improver;

    PlanSearch(Model model, Effort effort, PlanProgress progress, long seed) {
        this.model = model;
        this.effort = effort;
        this.progress = progress;
        improver = new Improver(model, seed);
    }

    Plan run() {
        Plan plan = plan(false);
        boolean goOn = progress.goOn(plan);
        double spoke = seconds();
        for (long round = 0; goOn && round < effort.rounds() && seconds() < effort.seconds(); round++) {
            boolean better = improver.step();
            if (better || seconds() - spoke > SECONDS_BETWEEN_WORDS) {
                plan = plan(false);
                spoke = seconds();
                goOn = progress.goOn(plan) && !plan.provenBest();
            }
        }
        return plan(!goOn && !plan.provenBest());
    }

    private double seconds() {
        return (System.nanoTime() - began) * 1e-9;
    }

    private Plan plan(boolean cancelled) {
        PlanWriter written = new PlanWriter(model, improver.best());
        long[] counts = improver.bestCounts();
        List<GoalValue> values = new ArrayList<>();
        for (GoalSetting setting : model.problem().goals()) {
            int count = Count.of(setting.goal());
            long most = count == Count.VALUE ? setting.units(model.totalValue()) : 0;
            values.add(new GoalValue(setting.goal(), counts[count], setting.units(counts[count]), 0, most));
        }
        return new Plan(
                written.charges(),
                written.runs(),
                values,
                BrokenLocks.of(model.problem().locks(), written.charges(), written.runs()),
                new SearchEffort(seconds(), improver.tried(), 0, cancelled));
    }
}
