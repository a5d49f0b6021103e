package fettle.planner.solve;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Costs of one pack's day beside all that is placed on a board. */
final class BoardCosts implements Costs {
    private final Board board;
    private final Weighing weighing;
    private final Course course;
    private final List<Item> forced;
    private final boolean others;
    private final int finish;
    private final double[] own;
    private final Set<Integer> barred = new HashSet<>();

    /**
     * @param forced joint things the pack must take part in
     * @param others whether it may take part in other joint things
     */
    BoardCosts(Board board, Weighing weighing, Course course, List<Item> forced, boolean others) {
        this.board = board;
        this.weighing = weighing;
        this.course = course;
        this.forced = forced;
        this.others = others;
        finish = Math.max(board.finishMinute(), weighing.freeFinishMinute());
        own = course.options().stream().mapToDouble(weighing::own).toArray();
    }

    /** Bars an option at one step. */
    void bar(Item item) {
        barred.add(course.options().indexOf(item.option()) * board.model().ticks() + item.tick());
    }

    @Override
    public double start(int index, int tick) {
        Option option = course.options().get(index);
        if (!barred.isEmpty() && barred.contains(index * board.model().ticks() + tick)) {
            return Double.POSITIVE_INFINITY;
        }
        double forcing = option.isJoint() ? forcing(option, tick) : 0;
        if (forcing >= 0 && weighing.shake().leavesOut(course, index, tick)) {
            return Double.POSITIVE_INFINITY;
        }
        if (board.fit(option, tick) == Board.NOWHERE) {
            return Double.POSITIVE_INFINITY;
        }
        int late = tick * board.model().stepMinutes() + option.minutes() - finish;
        return own[index]
                + forcing
                + weighing.at(course, index, tick)
                + (late > 0 ? late * weighing.weight(Count.FINISH) : 0);
    }

    private double forcing(Option option, int tick) {
        for (Item item : forced) {
            if (item.tick() == tick && option.key().equals(item.option().key())) {
                return -10 * weighing.weight(Count.LOCKS);
            }
        }
        return others ? 0 : Double.POSITIVE_INFINITY;
    }

    @Override
    public double fullMinute() {
        return weighing.weight(Count.FULL);
    }

    @Override
    public double storageUnit() {
        return weighing.weight(Count.STORAGE);
    }

    @Override
    public boolean runsOnce() {
        return true;
    }
}
