package fettle.planner.solve;

import fettle.planner.problem.Goal;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;

/** Raises the bounds of all goals in turns. Used from one thread at a time. */
final class Bounder {
    /** Steps made for one goal before the next has its turn. */
    private static final int TURN = 60;

    private final Model model;
    private final Rows rows;
    private final PricedPacks packs;
    private final Bounds bounds;
    private final Map<Integer, PriceAscent> ascents = new HashMap<>();
    private @Nullable FinishBound finish;
    private int place;
    private int turn;
    private final AtomicLong steps = new AtomicLong();

    Bounder(Model model, Rows rows, Bounds bounds) {
        this.model = model;
        this.rows = rows;
        this.bounds = bounds;
        packs = new PricedPacks(model, rows);
    }

    long steps() {
        return steps.get();
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
        FinishBound ending = finish;
        if (isFinish(at) && ending != null) {
            boolean same = ending.task().equals(BoundTask.of(model, at, reached));
            return !(same && ending.isSpent()) && !bounds.isProven(at, reached);
        }
        PriceAscent ascent = ascents.get(at);
        boolean spent = ascent != null && ascent.task().covers(BoundTask.of(model, at, reached)) && ascent.isSpent();
        return !spent && !bounds.isProven(at, reached);
    }

    private boolean isFinish(int at) {
        return model.problem().goals().get(at).goal() == Goal.EARLIEST_FINISH;
    }

    private void raiseFinish(int at, BoundTask task) {
        FinishBound ending = finish;
        if (ending == null || !ending.task().equals(task)) {
            ending = new FinishBound(model, rows, packs, task);
            finish = ending;
        }
        ending.step();
        bounds.found(at, new Bounds.Bound(task, ending.units(), new double[0]));
    }

    private void raise(int at, long[] reached) {
        steps.incrementAndGet();
        BoundTask task = BoundTask.of(model, at, reached);
        if (isFinish(at)) {
            raiseFinish(at, task);
            return;
        }
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
