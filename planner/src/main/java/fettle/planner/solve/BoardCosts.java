package fettle.planner.solve;

import java.util.Arrays;
import java.util.List;

/** Costs of one pack's day beside all that is placed on a board. */
final class BoardCosts {
    private final Board board;
    private final Ranking ranking;

    BoardCosts(Board board, Ranking ranking) {
        this.board = board;
        this.ranking = ranking;
    }

    /**
     * @param forced joint things the pack must take part in
     * @param others whether it may take part in other joint things
     */
    Costs of(Course course, List<Item> forced, boolean others) {
        int finish = board.finishMinute();
        double[][] start = new double[course.options().size()][];
        for (int i = 0; i < start.length; i++) {
            start[i] = costs(course.options().get(i), finish, forced, others);
        }
        return new Costs(start, ranking.weight(Count.FULL), ranking.weight(Count.STORAGE), true);
    }

    private double[] costs(Option option, int finish, List<Item> forced, boolean others) {
        int ticks = board.model().ticks();
        double[] costs = new double[ticks];
        Arrays.fill(costs, Double.POSITIVE_INFINITY);
        for (Item item : forced) {
            if (option.key().equals(item.option().key()) && board.fits(option, item.tick())) {
                costs[item.tick()] = own(option) - 10 * ranking.weight(Count.LOCKS);
            }
        }
        if (option.isJoint() && !others) {
            return costs;
        }
        double own = own(option);
        for (int tick = 0; tick < ticks; tick++) {
            if (costs[tick] == Double.POSITIVE_INFINITY && board.fits(option, tick)) {
                int late = tick * board.model().stepMinutes() + option.minutes() - finish;
                costs[tick] = own + (late > 0 ? late * ranking.weight(Count.FINISH) : 0);
            }
        }
        return costs;
    }

    private double own(Option option) {
        double cost = 0;
        for (int count = 0; count < Count.SIZE; count++) {
            cost += ranking.weight(count) * option.counts()[count];
        }
        return cost / option.share();
    }
}
