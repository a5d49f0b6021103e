package fettle.planner.solve;

/** Which runs the bound leaves out: a knapsack where the value left out has a budget. */
final class DroppedRuns {
    private final int[] values;
    private final boolean[] dropped;
    private double saved;

    DroppedRuns(int[] values) {
        this.values = values.clone();
        dropped = new boolean[values.length];
    }

    /**
     * Chooses the runs whose prices outweigh what leaving them out costs.
     *
     * @param prices price of each run
     * @param costPerValue cost of a unit of value left out
     * @param budget most value left out; {@link BoundTask#FREE} for any
     */
    void choose(double[] prices, double costPerValue, long budget) {
        java.util.Arrays.fill(dropped, false);
        saved = 0;
        if (budget == BoundTask.FREE) {
            for (int run = 0; run < values.length; run++) {
                double gain = prices[run] - costPerValue * values[run];
                dropped[run] = gain > 0;
                saved += Math.max(0, gain);
            }
        } else if (budget > 0) {
            fill(prices, (int) budget);
        }
    }

    private void fill(double[] prices, int budget) {
        double[][] best = new double[values.length + 1][budget + 1];
        for (int run = 0; run < values.length; run++) {
            for (int room = 0; room <= budget; room++) {
                double without = best[run][room];
                double with = room >= values[run] ? best[run][room - values[run]] + prices[run] : -1;
                best[run + 1][room] = Math.max(without, with);
            }
        }
        int room = budget;
        for (int run = values.length - 1; run >= 0; run--) {
            dropped[run] = best[run + 1][room] > best[run][room];
            room -= dropped[run] ? values[run] : 0;
        }
        saved = best[values.length][budget];
    }

    boolean isDropped(int run) {
        return dropped[run];
    }

    /** What leaving them out takes off the bound. */
    double saved() {
        return saved;
    }
}
