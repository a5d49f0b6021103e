package fettle.planner.solve;

import fettle.planner.problem.GoalSetting;
import fettle.planner.problem.OutingProblem;
import java.util.List;

/** Which of two plans is better, and the same as one number for searching a single day. */
final class Ranking {
    private final List<GoalSetting> goals;
    private final double[] weights;

    Ranking(Model model) {
        goals = model.problem().goals();
        weights = weights(model);
    }

    /** Below 0 if the first is better: broken locks, then the goals in order at their resolution, then more finely. */
    int compare(long[] one, long[] other) {
        int order = compareUnits(one, other);
        for (int i = 0; i < goals.size() && order == 0; i++) {
            int count = Count.of(goals.get(i).goal());
            order = Long.compare(one[count], other[count]);
        }
        return order;
    }

    /** The same as far as plans are told apart at all. */
    int compareUnits(long[] one, long[] other) {
        int order = Long.compare(one[Count.LOCKS], other[Count.LOCKS]);
        for (int i = 0; i < goals.size() && order == 0; i++) {
            int count = Count.of(goals.get(i).goal());
            order = Long.compare(goals.get(i).units(one[count]), goals.get(i).units(other[count]));
        }
        return order;
    }

    /** Number of goals. */
    int depth() {
        return goals.size();
    }

    /** The goal at a place of the order. */
    GoalSetting goal(int place) {
        return goals.get(place);
    }

    /** Whether a plan is worse in a goal before one, or in that one by more than some slack. */
    boolean isWorse(long[] one, long[] other, int place, double slack) {
        if (one[Count.LOCKS] != other[Count.LOCKS]) {
            return one[Count.LOCKS] > other[Count.LOCKS];
        }
        for (int i = 0; i < place; i++) {
            int count = Count.of(goals.get(i).goal());
            long mine = goals.get(i).units(one[count]);
            long its = goals.get(i).units(other[count]);
            if (mine != its) {
                return mine > its;
            }
        }
        int count = Count.of(goals.get(place).goal());
        return one[count] > other[count] + slack;
    }

    /** Weight of each count: a unit of one goal outweighs all of those after it. */
    double[] weights() {
        return weights.clone();
    }

    private static double[] weights(Model model) {
        List<GoalSetting> goals = model.problem().goals();
        double[] weights = new double[Count.SIZE];
        double unit = 1;
        for (int i = goals.size() - 1; i >= 0; i--) {
            int count = Count.of(goals.get(i).goal());
            weights[count] = unit / goals.get(i).resolution();
            unit *= 1 + range(model, count) / (double) goals.get(i).resolution();
        }
        weights[Count.LOCKS] = unit;
        return weights;
    }

    /** A count's plausible range, for weights alone. */
    private static double range(Model model, int count) {
        OutingProblem problem = model.problem();
        double perCharge = 1
                + model.courses().stream()
                        .flatMap(course -> course.options().stream())
                        .mapToLong(option -> Math.abs(option.counts()[count]))
                        .max()
                        .orElse(0);
        if (count == Count.VALUE) {
            return model.totalValue();
        }
        if (count == Count.STORAGE) {
            return 2.0 * problem.packs().size();
        }
        if (count == Count.FULL) {
            return problem.packs().stream()
                    .mapToDouble(pack -> (double) pack.fullWeight() * model.horizonMinutes())
                    .sum();
        }
        return count == Count.FINISH
                ? model.horizonMinutes()
                : perCharge * (problem.packs().size() + problem.runs().size());
    }
}
