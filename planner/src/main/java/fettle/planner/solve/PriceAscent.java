package fettle.planner.solve;

import java.util.Arrays;

/**
 * Raises a bound by moving prices towards what is used beyond capacity.
 *
 * <p>The volume algorithm: F. Barahona, R. Anbil, The volume algorithm: producing primal solutions with a subgradient method,
 * Mathematical Programming 87 (2000) 385-399. Not thread-safe.
 */
final class PriceAscent {
    private static final double FIRST_LENGTH = 0.3;
    private static final double LEAST_LENGTH = 1e-6;
    private static final double LONGEST = 2;
    private static final double LONGER = 1.1;
    private static final double SHORTER = 0.7;
    private static final double MOST_MIXED = 0.15;
    private static final double LEAST_RISE = 1e-4;
    private static final double LEAST_FAR = 0.02;
    private static final int PATIENCE = 5;

    private final Model model;
    private final Rows rows;
    private final PricedPacks packs;
    private final BoundTask task;
    private final double target;
    private final boolean[] active;
    private final double[] scales;
    private final double[] prices;
    private final double[] bestPrices;
    private final double[] excess;
    private final double[] direction;
    private double best = Double.NEGATIVE_INFINITY;
    private double length = FIRST_LENGTH;
    private int stale;
    private long steps;

    PriceAscent(Model model, Rows rows, PricedPacks packs, BoundTask task, double target) {
        this.model = model;
        this.rows = rows;
        this.packs = packs;
        this.task = task;
        this.target = target;
        scales = rows.scales();
        prices = new double[rows.size()];
        bestPrices = new double[rows.size()];
        excess = new double[rows.size()];
        direction = new double[rows.size()];
        active = active();
        begin();
    }

    private boolean[] active() {
        boolean[] rowsActive = new boolean[rows.size()];
        Arrays.fill(rowsActive, 0, rows.count(0), true);
        for (int source = 0; source < model.energyWattHours().length; source++) {
            if (rows.energy(source) < 0) {
                rowsActive[rows.run(model.problem().runs().size()) + source] = false;
            }
        }
        for (int count : new int[] {Count.LOCKS, Count.STORAGE, Count.FULL, Count.STRESS, Count.ENERGY}) {
            rowsActive[rows.count(count)] = !task.isFree(count) && (count != Count.LOCKS || model.lockCount() > 0);
        }
        scales[rows.count(Count.FULL)] = task.isFree(Count.FULL)
                ? 1
                : Math.max(
                        60,
                        task.budgets()[Count.FULL] / Math.max(1, model.courses().size()));
        return rowsActive;
    }

    private void begin() {
        if (task.count() == Count.VALUE) {
            for (int run = 0; run < model.problem().runs().size(); run++) {
                prices[rows.run(run)] = model.problem().runs().get(run).value();
            }
        }
    }

    /** The best bound so far, in the goal's own count. */
    double best() {
        return best;
    }

    /** The best bound in whole units of the goal's resolution. */
    long units() {
        return best <= 0 ? 0 : (long) Math.ceil(best / task.resolution() - 1e-6);
    }

    long steps() {
        return steps;
    }

    /** The prices behind the best bound. */
    double[] prices() {
        return bestPrices.clone();
    }

    BoundTask task() {
        return task;
    }

    /** Starts from prices found before; only before the first step. */
    void startFrom(double[] others) {
        for (int row = 0; row < prices.length; row++) {
            prices[row] = active[row] ? others[row] : 0;
        }
    }

    /** Whether steps have become too short to matter. */
    boolean isSpent() {
        return length < LEAST_LENGTH;
    }

    /** Makes one step. */
    void step() {
        steps++;
        if (steps > 1) {
            move();
        }
        double bound = packs.bound(task, prices, excess);
        if (steps == 1) {
            best = bound;
            System.arraycopy(prices, 0, bestPrices, 0, prices.length);
            System.arraycopy(excess, 0, direction, 0, prices.length);
            return;
        }
        double along = average();
        if (bound > best) {
            stale = bound > best + LEAST_RISE * Math.abs(best) ? 0 : stale + 1;
            best = bound;
            System.arraycopy(prices, 0, bestPrices, 0, prices.length);
            length = along >= 0 ? Math.min(LONGEST, length * LONGER) : length;
        } else {
            stale++;
        }
        if (stale >= PATIENCE) {
            stale = 0;
            length *= SHORTER;
        }
    }

    /** Mixes what is used now into the average use, so that the mix is short; gives how far both point the same way. */
    private double average() {
        double gg = 0;
        double gd = 0;
        double dd = 0;
        for (int row = 0; row < prices.length; row++) {
            if (active[row]) {
                double g = projected(row, excess[row]) / scales[row];
                double d = projected(row, direction[row]) / scales[row];
                gg += g * g;
                gd += g * d;
                dd += d * d;
            }
        }
        double flat = gg - 2 * gd + dd;
        double share = flat <= 0 ? MOST_MIXED : (dd - gd) / flat;
        share = Math.max(MOST_MIXED / 10, Math.min(MOST_MIXED, share));
        for (int row = 0; row < prices.length; row++) {
            direction[row] = share * excess[row] + (1 - share) * direction[row];
        }
        return gd;
    }

    private double projected(int row, double step) {
        return !isSigned(row) && bestPrices[row] <= 0 && step < 0 ? 0 : step;
    }

    private void move() {
        double square = 0;
        for (int row = 0; row < prices.length; row++) {
            if (active[row]) {
                double d = projected(row, direction[row]) / scales[row];
                square += d * d;
            }
        }
        if (square <= 0) {
            length = 0;
            return;
        }
        double far = Math.max(target - best, LEAST_FAR * Math.abs(target)) + 1e-9;
        double move = length * far / square;
        for (int row = 0; row < prices.length; row++) {
            if (active[row]) {
                double moved = bestPrices[row] + move * direction[row] / (scales[row] * scales[row]);
                prices[row] = isSigned(row) ? moved : Math.max(0, moved);
            }
        }
    }

    /** A run must be made or left out exactly once; every other row only has an upper limit. */
    private boolean isSigned(int row) {
        return row >= rows.run(0) && row < rows.run(model.problem().runs().size());
    }
}
