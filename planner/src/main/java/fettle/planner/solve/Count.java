package fettle.planner.solve;

import fettle.planner.problem.Goal;

/** Places of the counts: broken locks before all goals, then the goals by their ordinal. */
final class Count {
    static final int LOCKS = 0;
    static final int VALUE = of(Goal.MOST_VALUABLE_RUNS);
    static final int STORAGE = of(Goal.STORAGE_IN_TIME);
    static final int FULL = of(Goal.FEWEST_HOURS_AT_FULL);
    static final int STRESS = of(Goal.LEAST_STRESS);
    static final int ENERGY = of(Goal.LEAST_FIELD_ENERGY);
    static final int FINISH = of(Goal.EARLIEST_FINISH);
    static final int SIZE = Goal.values().length + 1;

    private Count() {}

    static int of(Goal goal) {
        return goal.ordinal() + 1;
    }
}
