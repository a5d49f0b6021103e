package fettle.planner.plan;

import fettle.planner.problem.Goal;

/**
 * What a goal comes to, and how much better it could be at most while the goals before it stay as they are.
 *
 * @param goal the goal
 * @param count what the plan comes to, as the goal counts; less is better
 * @param units the same in whole multiples of the goal's resolution, rounded up
 * @param boundUnits no plan that is as good in the goals before comes below this
 * @param mostUnits the worst that can be, where a share of it is what matters (value of all runs); else 0
 */
public record GoalValue(Goal goal, long count, long units, long boundUnits, long mostUnits) {

    /** Whether no plan is better in this goal, at its resolution, without being worse in one before. */
    public boolean provenBest() {
        return boundUnits >= units;
    }

    /**
     * How much better the best may be, as a share: of the value reached at best for runs, else of the count.
     *
     * @return 0 where proven best
     */
    public double gapFraction() {
        if (provenBest()) {
            return 0;
        }
        double whole = mostUnits > 0 ? mostUnits - boundUnits : units;
        return whole <= 0 ? 1 : Math.min(1, (units - boundUnits) / whole);
    }

    /** Share of the worst that is avoided, e.g. value of the runs made [units]; 0 where there is no worst. */
    public long reachedUnits() {
        return mostUnits > 0 ? mostUnits - units : 0;
    }
}
