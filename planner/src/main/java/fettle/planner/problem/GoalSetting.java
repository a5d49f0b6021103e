package fettle.planner.problem;

import java.util.Arrays;
import java.util.List;

/**
 * A goal at its place in the order.
 *
 * @param goal the goal
 * @param resolution the count is rounded up to whole multiples of this before plans are compared, ≥ 1; a goal that comes
 *     later decides between plans that are equal so far
 */
public record GoalSetting(Goal goal, int resolution) {
    public static GoalSetting usual(Goal goal) {
        return new GoalSetting(goal, goal.usualResolution());
    }

    /** All goals in their usual order. */
    public static List<GoalSetting> usualOrder() {
        return Arrays.stream(Goal.values()).map(GoalSetting::usual).toList();
    }

    /** The count in whole multiples of the resolution, rounded up. */
    public long units(long count) {
        return Math.floorDiv(count + resolution - 1, resolution);
    }
}
