package fettle.planner.solve;

import java.util.List;

/**
 * Costs of one pack's day at the prices of the bound.
 *
 * @param options what it can do
 * @param fixed cost of each option whenever it starts
 * @param last last step each may start at
 * @param summed prices summed up along every block of steps
 * @param ticks number of steps
 * @param fullMinute cost of one minute at full
 * @param storageUnit cost of one unit of missed storage
 */
record PricedCosts(
        List<PricedOption> options,
        double[] fixed,
        int[] last,
        double[] summed,
        int ticks,
        double fullMinute,
        double storageUnit)
        implements Costs {
    @Override
    public double start(int option, int tick) {
        return tick > last[option]
                ? Double.POSITIVE_INFINITY
                : fixed[option] + options.get(option).price(tick, summed, ticks);
    }

    @Override
    public boolean runsOnce() {
        return false;
    }
}
