package fettle.planner.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Tries every combination of the packs' days where a problem is small enough, leaving early what is no better by any goal.
 */
final class ExactSearch {
    private static final int MOST_PACKS = 4;
    private static final int MOST_DAYS = 8000;
    private static final long LOOK_EVERY = 1024;

    private final Model model;
    private final long mostTries;
    private final BooleanSupplier late;
    private final Ranking ranking;
    private final Board board;
    private final List<List<Day>> days;
    private final long[][] rest;
    private List<Day> best;
    private long[] bestCounts;
    private long tries;

    private ExactSearch(
            Model model,
            List<List<Day>> days,
            List<Day> known,
            long[] knownCounts,
            long mostTries,
            BooleanSupplier late) {
        this.mostTries = mostTries;
        this.late = late;
        this.model = model;
        this.days = days;
        ranking = new Ranking(model);
        board = new Board(model);
        best = known;
        bestCounts = knownCounts;
        rest = rest();
    }

    /** A plan and its counts. */
    record Found(List<Day> days, long[] counts) {}

    /** The best plan; nothing where it got late, or where the problem is too large to try everything. */
    static Optional<Found> best(
            Model model, List<Day> known, long[] knownCounts, long mostTries, BooleanSupplier late) {
        if (model.courses().size() > MOST_PACKS) {
            return Optional.empty();
        }
        List<List<Day>> days = new ArrayList<>();
        for (Course course : model.courses()) {
            Optional<List<Day>> all = AllDays.of(course, model.ticks(), MOST_DAYS);
            if (all.isEmpty()) {
                return Optional.empty();
            }
            List<Day> sorted = new ArrayList<>(all.get());
            sorted.sort(Comparator.comparingLong(day -> full(model, day)));
            days.add(sorted);
        }
        ExactSearch search = new ExactSearch(model, days, known, knownCounts, mostTries, late);
        search.descend(0);
        return search.tries > mostTries ? Optional.empty() : Optional.of(new Found(search.best, search.bestCounts));
    }

    private static long full(Model model, Day day) {
        return day.fullMinutes(model.stepMinutes(), model.horizonMinutes());
    }

    /** What the packs from each one on bring at best: most value and locks kept; least of the others. */
    private long[][] rest() {
        long[][] sums = new long[days.size() + 1][Count.SIZE];
        for (int pack = days.size() - 1; pack >= 0; pack--) {
            long[] least = new long[Count.SIZE];
            least[Count.FULL] = Long.MAX_VALUE;
            least[Count.STORAGE] = 2;
            for (Day day : days.get(pack)) {
                least[Count.FULL] = Math.min(least[Count.FULL], full(model, day));
                least[Count.STORAGE] = Math.min(least[Count.STORAGE], day.storage(model.stepMinutes()));
                for (int count : new int[] {Count.LOCKS, Count.VALUE}) {
                    long sum = day.items().stream()
                            .mapToLong(item -> item.option().counts()[count])
                            .sum();
                    least[count] = Math.min(least[count], sum);
                }
            }
            for (int count = 0; count < Count.SIZE; count++) {
                sums[pack][count] = sums[pack + 1][count] + least[count];
            }
        }
        return sums;
    }

    private void descend(int pack) {
        if (pack == days.size()) {
            long[] counts = board.counts();
            if (isWhole() && ranking.compareUnits(counts, bestCounts) < 0) {
                best = board.days();
                bestCounts = counts;
            }
            return;
        }
        for (Day day : days.get(pack)) {
            place(pack, day, new ArrayList<>());
        }
    }

    /** Places a day item by item, on every port each may be on. */
    private void place(int pack, Day day, List<Item> items) {
        tries++;
        if (tries % LOOK_EVERY == 0 && late.getAsBoolean()) {
            tries = mostTries + 1;
        }
        if (tries > mostTries) {
            return;
        }
        if (items.size() == day.items().size()) {
            board.place(new Day(day.course(), items));
            if (ranking.compareUnits(hoped(pack + 1), bestCounts) < 0) {
                descend(pack + 1);
            }
            board.remove(pack);
            return;
        }
        Item next = day.items().get(items.size());
        board.place(new Day(day.course(), items));
        List<Integer> places = board.fits(next.option(), next.tick());
        board.remove(pack);
        for (int place : places) {
            items.add(next.on(place));
            place(pack, day, items);
            items.remove(items.size() - 1);
        }
    }

    private boolean isWhole() {
        return board.days().stream()
                .flatMap(day -> day.items().stream())
                .allMatch(item -> !item.option().isJoint()
                        || board.placed(item.shared()) == item.option().share());
    }

    private long[] hoped(int from) {
        long[] counts = board.placedCounts(from);
        for (int count = 0; count < Count.SIZE; count++) {
            counts[count] += rest[from][count];
        }
        counts[Count.VALUE] = Math.max(0, counts[Count.VALUE]);
        counts[Count.LOCKS] = Math.max(0, counts[Count.LOCKS]);
        return counts;
    }
}
