package fettle.planner.solve;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.planner.RandomProblems;
import fettle.planner.problem.Goal;
import fettle.planner.problem.OutingProblem;
import org.junit.jupiter.api.Test;

/** A bound holds for every plan within its budgets, so also for any plan at hand; at all prices on the way. */
class BoundTest {
    private static final int PROBLEMS = 150;
    private static final int STEPS = 60;
    private static final double ROUNDING = 1e-6;

    @Test
    void isNeverAboveAPlanThatKeepsItsBudgets() {
        int tight = 0;
        for (long seed = 0; seed < PROBLEMS; seed++) {
            OutingProblem problem =
                    RandomProblems.of(seed, 2 + (int) (seed % 5), 1 + (int) (seed % 3), 1 + (int) (seed % 6));
            Model model = ModelBuilder.of(problem);
            Rows rows = new Rows(model);
            Improver improver = new Improver(model, rows, new Bounds(model), seed);
            for (int round = 0; round < 60; round++) {
                improver.lookAt(round % problem.goals().size(), 1);
                improver.step();
            }
            PricedPacks packs = new PricedPacks(model, rows);
            for (int place = 0; place < problem.goals().size(); place++) {
                tight += holds(model, rows, packs, BoundTask.of(model, place, improver.bestCounts())) ? 1 : 0;
            }
        }
        assertThat(tight).as("bounds that meet the plan").isGreaterThan(PROBLEMS * 2);
    }

    private static boolean holds(Model model, Rows rows, PricedPacks packs, BoundTask task) {
        if (task.count() == Count.of(Goal.EARLIEST_FINISH)) {
            long[] budgets = task.budgets().clone();
            budgets[Count.FINISH] = task.reachedCount();
            BoundTask kept = new BoundTask(task.count(), 1, budgets, task.reachedCount());
            PriceAscent refuting = new PriceAscent(model, rows, packs, kept, 1);
            for (int step = 0; step < STEPS; step++) {
                refuting.step();
            }
            assertThat(refuting.best()).as("a finish that is reached").isLessThanOrEqualTo(1e-3);
            return false;
        }
        PriceAscent ascent = new PriceAscent(model, rows, packs, task, task.reachedCount());
        for (int step = 0; step < STEPS; step++) {
            ascent.step();
        }
        assertThat(ascent.best()).as("%s", model.problem().goals()).isLessThanOrEqualTo(task.reachedCount() + ROUNDING);
        return ascent.units() * task.resolution() >= task.reachedCount();
    }
}
