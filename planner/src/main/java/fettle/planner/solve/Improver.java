package fettle.planner.solve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

/**
 * Makes a plan better: takes a few packs' days away and gives each its best day again, in another order. Keeps what is not worse.
 *
 * <p>Large-neighbourhood search: P. Shaw, Using constraint programming and local search methods to solve vehicle routing
 * problems, CP 1998, pp. 417-431.
 */
final class Improver {
    private static final int MOST_PULLED = 6;

    private final Model model;
    private final Ranking ranking;
    private final Board board;
    private final Inserter inserter;
    private final Random random;
    private List<Day> best;
    private long[] bestCounts;
    private long tried;

    Improver(Model model, long seed) {
        this.model = model;
        ranking = new Ranking(model);
        board = new Board(model);
        inserter = new Inserter(board, ranking);
        random = new Random(seed);
        first();
        best = board.days();
        bestCounts = board.counts();
    }

    /** Packs one after the other, first those with the fewest choices. */
    private void first() {
        List<Course> order = new ArrayList<>(model.courses());
        order.sort((a, b) -> Integer.compare(locked(b), locked(a)));
        order.forEach(course -> inserter.insert(course.index()));
        tried++;
    }

    private static int locked(Course course) {
        return (int) course.options().stream()
                .filter(option -> option.counts()[Count.LOCKS] < 0)
                .count();
    }

    List<Day> best() {
        return best;
    }

    long[] bestCounts() {
        return bestCounts.clone();
    }

    long tried() {
        return tried;
    }

    /** Tries one change. Returns whether a better plan was found. */
    boolean step() {
        if (model.courses().isEmpty()) {
            return false;
        }
        tried++;
        List<Day> before = board.days();
        long[] countsBefore = board.counts();
        Set<Integer> pulled = new LinkedHashSet<>();
        for (int pack : chosen()) {
            pulled.addAll(inserter.pull(pack));
        }
        List<Integer> order = new ArrayList<>(pulled);
        Collections.shuffle(order, random);
        order.forEach(inserter::insert);
        long[] counts = board.counts();
        if (ranking.compare(counts, countsBefore) > 0) {
            board.restore(before);
            return false;
        }
        if (ranking.compare(counts, bestCounts) < 0) {
            best = board.days();
            bestCounts = counts;
            return true;
        }
        return false;
    }

    private List<Integer> chosen() {
        int packs = model.courses().size();
        int most = Math.min(packs, MOST_PULLED);
        int size = 1 + random.nextInt(most);
        List<Integer> chosen = new ArrayList<>();
        while (chosen.size() < size) {
            int pack = random.nextInt(packs);
            if (!chosen.contains(pack)) {
                chosen.add(pack);
            }
        }
        return chosen;
    }
}
