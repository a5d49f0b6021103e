package fettle.planner.solve;

import fettle.planner.plan.Plan;

/** Hears of plans while they are searched. Called from one thread at a time. */
@FunctionalInterface
public interface PlanProgress {
    /**
     * Hears of the best plan so far: the first at once, then whenever it or a bound is better, and now and then.
     *
     * @return whether to go on
     */
    boolean goOn(Plan best);

    /** Hears nothing and never stops. */
    static PlanProgress silent() {
        return best -> true;
    }
}
