package fettle.planner.solve;

import java.util.ArrayList;
import java.util.List;

/** An option as the bound sees it: stretches of rows it uses evenly, and single rows. */
final class PricedOption {
    private final Option option;
    private final int[] base;
    private final int[] from;
    private final int[] to;
    private final double[] amount;
    private final int energyRow;

    PricedOption(Model model, Rows rows, Option option) {
        this.option = option;
        List<double[]> stretches = new ArrayList<>();
        if (option.isRun()) {
            int craft = rows.craft(model.craftOf()[option.run()]);
            stretches.add(new double[] {craft, 0, model.craftTicks()[option.run()], 1});
        }
        if (!option.isRun()) {
            stretches.add(new double[] {rows.resource(option.places().get(0).port()), 0, option.ticks(), 1});
        }
        for (Use use : option.uses()) {
            int row = rows.resource(use.resource());
            if (row >= 0) {
                addStretches(stretches, row, use.amounts());
            }
        }
        base = stretches.stream().mapToInt(stretch -> (int) stretch[0]).toArray();
        from = stretches.stream().mapToInt(stretch -> (int) stretch[1]).toArray();
        to = stretches.stream().mapToInt(stretch -> (int) stretch[2]).toArray();
        amount = stretches.stream()
                .mapToDouble(stretch -> stretch[3] / option.share())
                .toArray();
        energyRow = option.isRun() ? -1 : rows.energy(option.source());
    }

    private static void addStretches(List<double[]> stretches, int row, int[] amounts) {
        int began = 0;
        for (int at = 1; at <= amounts.length; at++) {
            if (at == amounts.length || amounts[at] != amounts[began]) {
                if (amounts[began] > 0) {
                    stretches.add(new double[] {row, began, at, amounts[began]});
                }
                began = at;
            }
        }
    }

    Option option() {
        return option;
    }

    /** Price of all rows used when started at a step, from prices summed up along every block of steps. */
    double price(int tick, double[] summed, int ticks) {
        double price = 0;
        for (int i = 0; i < base.length; i++) {
            int block = base[i] + base[i] / ticks;
            price += amount[i]
                    * (summed[block + Math.min(ticks, tick + to[i])] - summed[block + Math.min(ticks, tick + from[i])]);
        }
        return price;
    }

    /** Price of its energy from a source that runs out. */
    double energyPrice(double[] prices) {
        return energyRow < 0 ? 0 : prices[energyRow] * option.wattHours() / option.share();
    }

    /** Adds what it uses to the rows. */
    void use(int tick, double[] used, int ticks) {
        for (int i = 0; i < base.length; i++) {
            int last = Math.min(ticks, tick + to[i]);
            for (int at = tick + from[i]; at < last; at++) {
                used[base[i] + at] += amount[i];
            }
        }
        if (energyRow >= 0) {
            used[energyRow] += option.wattHours() / (double) option.share();
        }
    }
}
