package fettle.planner.solve;

import fettle.planner.problem.GoalSetting;
import org.jspecify.annotations.Nullable;

/** The bounds found so far, and the prices behind them. Thread-safe. */
final class Bounds {
    private final Model model;
    private final @Nullable Bound[] found;

    /**
     * A bound on one goal.
     *
     * @param task what was bounded, under which budgets
     * @param units no plan within the budgets comes below this many units
     * @param prices the prices behind it; empty where it has none
     */
    record Bound(BoundTask task, long units, double[] prices) {}

    Bounds(Model model) {
        this.model = model;
        found = new Bound[model.problem().goals().size()];
    }

    synchronized void found(int place, Bound bound) {
        Bound before = found[place];
        boolean holds = before != null && before.task().covers(bound.task());
        if (before == null || !holds || bound.units() >= before.units()) {
            found[place] = bound;
        }
    }

    /** Everything was tried: nothing is better than these counts. */
    synchronized void settle(long[] reached) {
        for (int place = 0; place < found.length; place++) {
            GoalSetting setting = model.problem().goals().get(place);
            long units = setting.units(reached[Count.of(setting.goal())]);
            found[place] = new Bound(BoundTask.of(model, place, reached), units, new double[0]);
        }
    }

    /** The bound on a goal for a plan that has reached these counts [units]; 0 where none is known. */
    synchronized long units(int place, long[] reached) {
        Bound bound = found[place];
        BoundTask task = BoundTask.of(model, place, reached);
        return bound != null && bound.task().covers(task) ? bound.units() : 0;
    }

    synchronized double[] prices(int place) {
        Bound bound = found[place];
        return bound == null ? new double[0] : bound.prices();
    }

    boolean isProven(int place, long[] reached) {
        GoalSetting setting = model.problem().goals().get(place);
        return units(place, reached) >= setting.units(reached[Count.of(setting.goal())]);
    }

    boolean areProven(long[] reached) {
        for (int place = 0; place < found.length; place++) {
            if (!isProven(place, reached)) {
                return false;
            }
        }
        return true;
    }
}
