package fettle.planner.solve;

/**
 * Bounds the finish: a finish is refuted where prices show that no plan keeps all budgets and ends by it.
 *
 * <p>First a finish one unit below the best known is tried, then ever earlier ones until one is refuted.
 */
final class FinishBound {
    private static final int STEPS_FOR_ONE = 250;

    /** Far above rounding: without a goal of its own, any plan within the budgets keeps the bound at 0 or below. */
    private static final double REFUTED = 0.01;

    private final Model model;
    private final Rows rows;
    private final PricedPacks packs;
    private final BoundTask task;
    private PriceAscent ascent;
    private long below = 1;
    private boolean done;
    private long units;

    FinishBound(Model model, Rows rows, PricedPacks packs, BoundTask task) {
        this.model = model;
        this.rows = rows;
        this.packs = packs;
        this.task = task;
        ascent = attempt();
    }

    private long reachedUnits() {
        return Math.floorDiv(task.reachedCount() + task.resolution() - 1, task.resolution());
    }

    private PriceAscent attempt() {
        long[] budgets = task.budgets().clone();
        budgets[Count.FINISH] = Math.max(0, (reachedUnits() - below) * task.resolution());
        BoundTask limited = new BoundTask(Count.FINISH, 1, budgets, task.reachedCount());
        return new PriceAscent(model, rows, packs, limited, 1);
    }

    BoundTask task() {
        return task;
    }

    long units() {
        return units;
    }

    boolean isSpent() {
        return done;
    }

    /** Makes one step. */
    void step() {
        ascent.step();
        if (ascent.best() > REFUTED) {
            units = Math.max(0, reachedUnits() - below + 1);
            done = true;
        } else if (ascent.isSpent() || ascent.steps() >= STEPS_FOR_ONE) {
            done = below >= reachedUnits();
            below = Math.min(reachedUnits(), 2 * below + 1);
            ascent = attempt();
        }
    }
}
