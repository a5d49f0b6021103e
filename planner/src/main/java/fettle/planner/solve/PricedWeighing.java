package fettle.planner.solve;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * Weighs days by the prices behind a bound: what a pack takes costs what it is worth to all others, a run pays what its place
 * in the plan is worth. Immutable.
 */
final class PricedWeighing extends Weighing {
    private final int ticks;
    private final double[] prices;
    private final double[] summed;
    private final double unit;
    private final Map<Option, List<PricedOption>> priced = new IdentityHashMap<>();
    private final Rows rows;

    /**
     * @param weights weights of the counts, without those the prices stand for
     * @param unit weight of one of the count that was bounded
     * @param freeFinishMinute a finish up to this costs nothing
     */
    PricedWeighing(Model model, Rows rows, double[] weights, double[] prices, double unit, int freeFinishMinute) {
        super(weights, freeFinishMinute, Shake.NONE);
        ticks = model.ticks();
        this.rows = rows;
        this.prices = prices;
        this.unit = unit;
        summed = rows.summed(prices);
        for (Course course : model.courses()) {
            for (Option option : course.options()) {
                priced.put(option, onPorts(model, option));
            }
        }
    }

    private List<PricedOption> onPorts(Model model, Option option) {
        List<PricedOption> each = new ArrayList<>();
        if (option.isRun()) {
            each.add(new PricedOption(model, rows, option));
        }
        for (List<Option.Place> places : rows.kinds(option)) {
            each.add(new PricedOption(model, rows, option.on(places)));
        }
        return each;
    }

    @Override
    double at(Course course, int index, int tick) {
        Option option = course.options().get(index);
        double least = Double.POSITIVE_INFINITY;
        for (PricedOption one : priced.getOrDefault(option, List.of())) {
            least = Math.min(least, one.price(tick, summed, ticks) + one.energyPrice(prices));
        }
        double run = option.isRun() ? prices[rows.run(option.run())] / option.share() : 0;
        return unit * (least - run);
    }
}
