package fettle.planner.solve;

import fettle.planner.problem.GoalSetting;
import java.util.Arrays;
import java.util.List;

/**
 * A goal to bound while the goals before it stay within budgets.
 *
 * @param count the goal's count
 * @param resolution its resolution
 * @param budgets most of each count allowed; {@link #FREE} where any is
 * @param reachedCount the count of the best plan known
 */
record BoundTask(int count, int resolution, long[] budgets, long reachedCount) {
    static final long FREE = Long.MAX_VALUE;

    /** The goal at a place of the order, for a plan that has reached these counts. */
    static BoundTask of(Model model, int place, long[] reached) {
        List<GoalSetting> goals = model.problem().goals();
        long[] budgets = new long[Count.SIZE];
        Arrays.fill(budgets, FREE);
        budgets[Count.LOCKS] = reached[Count.LOCKS];
        for (int before = 0; before < place; before++) {
            GoalSetting setting = goals.get(before);
            int count = Count.of(setting.goal());
            budgets[count] = setting.units(reached[count]) * setting.resolution();
        }
        int count = Count.of(goals.get(place).goal());
        return new BoundTask(count, goals.get(place).resolution(), budgets, reached[count]);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof BoundTask task
                && task.count == count
                && task.reachedCount == reachedCount
                && Arrays.equals(task.budgets, budgets);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(budgets) + count;
    }

    boolean isFree(int of) {
        return budgets[of] == FREE;
    }

    /** Whether a bound found under these budgets holds under others: they must be no larger. */
    boolean covers(BoundTask other) {
        for (int i = 0; i < budgets.length; i++) {
            if (other.budgets[i] > budgets[i]) {
                return false;
            }
        }
        return count == other.count;
    }
}
