package fettle.planner.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * Finds the cheapest day of one pack: a shortest path over its charge and the time. Not thread-safe; reused for speed.
 *
 * <p>Each state is a level at a step. From it the pack waits a step or starts an option. A day may end after any option.
 */
final class DayFinder {
    private static final int NONE = -1;

    private final int step;
    private final int ticks;
    private final int horizon;
    private double[] reached = new double[0];
    private int[] label = new int[0];
    private int[] labelOption = new int[256];
    private int[] labelTick = new int[256];
    private int[] labelBefore = new int[256];
    private int labels;
    private double best;
    private int bestBefore;
    private int bestOption;
    private int bestTick;

    DayFinder(Model model) {
        step = model.stepMinutes();
        ticks = model.ticks();
        horizon = model.horizonMinutes();
    }

    /** Cost of the day found last. */
    double cost() {
        return best;
    }

    /** The cheapest day. */
    Day find(Course course, Costs costs) {
        begin(course, costs);
        for (int tick = course.freeTick(); tick < ticks; tick++) {
            for (int level = 0; level < course.levels().size(); level++) {
                int at = level * ticks + tick;
                if (reached[at] < Double.POSITIVE_INFINITY) {
                    for (int option : course.at()[level][tick]) {
                        relax(course, costs, at, option, tick);
                    }
                    waitAStep(course, costs, level, at, tick);
                }
            }
        }
        return day(course);
    }

    private void begin(Course course, Costs costs) {
        int size = course.levels().size() * ticks;
        if (reached.length < size) {
            reached = new double[size];
            label = new int[size];
        }
        Arrays.fill(reached, 0, size, Double.POSITIVE_INFINITY);
        labels = 0;
        Level first = course.levels().get(0);
        double perMinute = perMinute(course, costs, 0);
        best = perMinute * horizon + (first.stored() ? 0 : 2 * costs.storageUnit());
        bestOption = NONE;
        bestBefore = NONE;
        if (course.freeTick() < ticks) {
            reached[course.freeTick()] = perMinute * Math.min(horizon, course.freeTick() * step);
            label[course.freeTick()] = NONE;
        }
    }

    private static double perMinute(Course course, Costs costs, int level) {
        return course.levels().get(level).full()
                ? costs.fullMinute() * course.pack().fullWeight()
                : 0;
    }

    private void relax(Course course, Costs costs, int at, int index, int tick) {
        double start = costs.start(index, tick);
        if (start == Double.POSITIVE_INFINITY) {
            return;
        }
        Option option = course.options().get(index);
        if (costs.runsOnce() && option.isRun() && isDone(course, label[at], option.run())) {
            return;
        }
        double after = reached[at] + start;
        int end = tick * step + option.minutes();
        double perMinute = perMinute(course, costs, option.to());
        double ended = after + perMinute * (horizon - end) + storage(course, costs, option.to(), end);
        if (ended < best) {
            best = ended;
            bestBefore = label[at];
            bestOption = index;
            bestTick = tick;
        }
        int free = tick + option.freeTicks();
        if (free < ticks) {
            int next = option.to() * ticks + free;
            double arrived = after + perMinute * (free * step - end);
            if (arrived < reached[next]) {
                reached[next] = arrived;
                label[next] = newLabel(label[at], index, tick);
            }
        }
    }

    private static double storage(Course course, Costs costs, int level, int end) {
        if (!course.levels().get(level).stored()) {
            return 2 * costs.storageUnit();
        }
        return end > course.pack().times().storageByMinute() ? costs.storageUnit() : 0;
    }

    private void waitAStep(Course course, Costs costs, int level, int at, int tick) {
        if (tick + 1 < ticks) {
            double waited = reached[at] + perMinute(course, costs, level) * step;
            if (waited < reached[at + 1]) {
                reached[at + 1] = waited;
                label[at + 1] = label[at];
            }
        }
    }

    private boolean isDone(Course course, int from, int run) {
        for (int at = from; at != NONE; at = labelBefore[at]) {
            if (course.options().get(labelOption[at]).run() == run) {
                return true;
            }
        }
        return false;
    }

    private int newLabel(int before, int option, int tick) {
        if (labels == labelOption.length) {
            labelOption = Arrays.copyOf(labelOption, 2 * labels);
            labelTick = Arrays.copyOf(labelTick, 2 * labels);
            labelBefore = Arrays.copyOf(labelBefore, 2 * labels);
        }
        labelOption[labels] = option;
        labelTick[labels] = tick;
        labelBefore[labels] = before;
        return labels++;
    }

    private Day day(Course course) {
        List<Item> items = new ArrayList<>();
        if (bestOption != NONE) {
            items.add(Item.unplaced(course.options().get(bestOption), bestTick));
        }
        for (int at = bestBefore; at != NONE; at = labelBefore[at]) {
            items.add(Item.unplaced(course.options().get(labelOption[at]), labelTick[at]));
        }
        Collections.reverse(items);
        return new Day(course, items);
    }
}
