package fettle.planner.solve;

import fettle.planner.problem.RunWanted;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * The bound at given prices: every pack takes its cheapest day by itself, and every row is paid for up to what there is of it.
 *
 * <p>Lagrangian relaxation of all that ties packs together: M. L. Fisher, The Lagrangian relaxation method for solving integer
 * programming problems, Management Science 27 (1981) 1-18. A pack may meet a run twice, and packs charged or used together may
 * choose differently: both only lower the bound.
 */
final class PricedPacks {
    private final Model model;
    private final Rows rows;
    private final double[] capacities;
    private final List<Course> courses = new ArrayList<>();
    private final List<List<PricedOption>> options = new ArrayList<>();
    private final Map<Option, PricedOption> byOption = new IdentityHashMap<>();
    private final DayFinder finder;
    private final DroppedRuns dropped;
    private double[] summed = new double[0];
    private final double[] weights = new double[Count.SIZE];
    private final List<Day> days = new ArrayList<>();

    PricedPacks(Model model, Rows rows) {
        this.model = model;
        this.rows = rows;
        capacities = rows.capacities();
        finder = new DayFinder(model);
        dropped = new DroppedRuns(
                model.problem().runs().stream().mapToInt(RunWanted::value).toArray());
        for (Course course : model.courses()) {
            Course priced = Course.of(course, onKinds(course.options()));
            courses.add(priced);
            List<PricedOption> each = priced.options().stream()
                    .map(option -> new PricedOption(model, rows, option))
                    .toList();
            each.forEach(one -> byOption.put(one.option(), one));
            options.add(each);
        }
    }

    /** Every option once for each kind of port it can be done on. */
    private List<Option> onKinds(List<Option> all) {
        List<Option> apart = new ArrayList<>();
        for (Option option : all) {
            rows.kinds(option).forEach(places -> apart.add(option.on(places)));
            if (option.isRun()) {
                apart.add(option);
            }
        }
        return apart;
    }

    /**
     * The bound on a task's count at some prices.
     *
     * @param prices price of every row
     * @param excess filled with what is used beyond each row's capacity
     */
    double bound(BoundTask task, double[] prices, double[] excess) {
        summed = rows.summed(prices);
        setWeights(task, prices);
        for (int row = 0; row < excess.length; row++) {
            excess[row] = -capacities[row];
        }
        double bound = constant(task, prices, excess);
        days.clear();
        for (int pack = 0; pack < courses.size(); pack++) {
            Day day = finder.find(courses.get(pack), costs(task, prices, pack));
            bound += finder.cost();
            days.add(day);
            use(day, excess);
        }
        return bound;
    }

    /** Days found last. */
    List<Day> days() {
        return days;
    }

    private void setWeights(BoundTask task, double[] prices) {
        for (int count = 0; count < Count.SIZE; count++) {
            weights[count] = (count == task.count() ? 1 : 0) + prices[rows.count(count)];
        }
    }

    /** The part of the bound that hangs on no pack. */
    private double constant(BoundTask task, double[] prices, double[] excess) {
        double constant = 0;
        for (int row = 0; row < rows.count(0); row++) {
            boolean isRun = row >= rows.run(0)
                    && row < rows.run(0) + model.problem().runs().size();
            constant -= isRun ? 0 : prices[row] * capacities[row];
        }
        for (int count = 0; count < Count.SIZE; count++) {
            if (!task.isFree(count)) {
                constant -= prices[rows.count(count)] * task.budgets()[count];
                excess[rows.count(count)] = -task.budgets()[count];
            }
        }
        constant += weights[Count.LOCKS] * model.lockCount();
        excess[rows.count(Count.LOCKS)] += model.lockCount();
        return constant + runs(task, prices, excess);
    }

    private double runs(BoundTask task, double[] prices, double[] excess) {
        int count = model.problem().runs().size();
        double[] runPrices = Arrays.copyOfRange(prices, rows.run(0), rows.run(0) + count);
        double paid = 0;
        dropped.choose(runPrices, task.count() == Count.VALUE ? 1 : 0, task.budgets()[Count.VALUE]);
        for (int run = 0; run < count; run++) {
            paid += runPrices[run];
            excess[rows.run(run)] = dropped.isDropped(run) ? 0 : 1;
        }
        return paid - dropped.saved();
    }

    private Costs costs(BoundTask task, double[] prices, int pack) {
        boolean mustStore = !task.isFree(Count.STORAGE) && task.budgets()[Count.STORAGE] == 0;
        double storage = mustStore ? BoundRules.FORBIDDEN : weights[Count.STORAGE];
        List<PricedOption> priced = options.get(pack);
        double[] fixed = new double[priced.size()];
        int[] last = new int[priced.size()];
        for (int i = 0; i < fixed.length; i++) {
            Option option = priced.get(i).option();
            double run = option.isRun() ? prices[rows.run(option.run())] / option.share() : 0;
            fixed[i] = own(option) + priced.get(i).energyPrice(prices) - run;
            last[i] = BoundRules.forbids(task, option) ? -1 : BoundRules.lastStart(task, option, model);
        }
        return new PricedCosts(priced, fixed, last, summed, model.ticks(), weights[Count.FULL], storage);
    }

    private double own(Option option) {
        long[] counts = option.counts();
        return (weights[Count.LOCKS] * counts[Count.LOCKS]
                        + weights[Count.STRESS] * counts[Count.STRESS]
                        + weights[Count.ENERGY] * counts[Count.ENERGY])
                / option.share();
    }

    private void use(Day day, double[] excess) {
        excess[rows.count(Count.FULL)] += day.fullMinutes(model.stepMinutes(), model.horizonMinutes());
        excess[rows.count(Count.STORAGE)] += day.storage(model.stepMinutes());
        for (Item item : day.items()) {
            Option option = item.option();
            PricedOption priced = Objects.requireNonNull(byOption.get(option));
            priced.use(item.tick(), excess, model.ticks());
            double part = 1.0 / option.share();
            if (option.isRun()) {
                excess[rows.run(option.run())] -= part;
            }
            for (int count : new int[] {Count.LOCKS, Count.STRESS, Count.ENERGY}) {
                excess[rows.count(count)] += part * option.counts()[count];
            }
        }
    }
}
