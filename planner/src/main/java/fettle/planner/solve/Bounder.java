package fettle.planner.solve;

import java.util.HashMap;
import java.util.Map;

/** Raises the bounds of all goals in turns. Used from one thread at a time. */
final class Bounder {
    /** Steps made for one goal before the next has its turn. */
    private static final int TURN = 60;

    private final Model model;
    private final Rows rows;
    private final PricedPacks packs;
    private final Bounds bounds;
    private final Map<Integer, PriceAscent> ascents = new HashMap<>();
    private int place;
    private int turn;
    private volatile long steps;

    Bounder(Model model, Rows rows, Bounds bounds) {
        this.model = model;
        this.rows = rows;
        this.bounds = bounds;
        packs = new PricedPacks(model, rows);
    }

    long steps() {
        return steps;
    }

    /**
     * Makes one step for a goal that is not proven best yet.
     *
     * @param reached counts of the best plan known
     * @return whether there was anything left to do
     */
    boolean step(long[] reached) {
        int goals = model.problem().goals().size();
        for (int tried = 0; tried < goals; tried++) {
            if (turn < TURN && isOpen(place, reached)) {
                turn++;
                raise(place, reached);
                return true;
            }
            turn = 0;
            place = (place + 1) % goals;
        }
        return false;
    }

    private boolean isOpen(int at, long[] reached) {
        PriceAscent ascent = ascents.get(at);
        boolean spent = ascent != null && ascent.task().covers(BoundTask.of(model, at, reached)) && ascent.isSpent();
        return !spent && !bounds.isProven(at, reached);
    }

    private void raise(int at, long[] reached) {
        steps++;
        BoundTask task = BoundTask.of(model, at, reached);
        PriceAscent ascent = ascents.get(at);
        if (ascent == null || !ascent.task().covers(task)) {
            PriceAscent next = new PriceAscent(model, rows, packs, task, task.reachedCount());
            if (ascent != null) {
                next.startFrom(ascent.prices());
            }
            ascent = next;
            ascents.put(at, ascent);
        }
        ascent.step();
        bounds.found(at, new Bounds.Bound(ascent.task(), ascent.units(), ascent.prices()));
    }
}
