package fettle.planner.solve;

import fettle.planner.problem.Goal;
import fettle.planner.problem.GoalSetting;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/**
 * Makes a plan better: takes a few packs' days away and gives each its best day again, in another order.
 *
 * <p>Large-neighbourhood search: P. Shaw, Using constraint programming and local search methods to solve vehicle routing
 * problems, CP 1998, pp. 417-431. Goals are looked at one at a time: for a while only the goals up to one count, and a plan a
 * little worse in that one is taken, ever less so (simulated annealing). Not thread-safe.
 */
final class Improver {
    private static final double FIRST_SLACK = 0.03;

    private final Model model;
    private final Rows rows;
    private final Bounds bounds;
    private final Ranking ranking;
    private final Board board;
    private final Inserter inserter;
    private final Neighbours neighbours;
    private final Random random;
    private List<Day> best;
    private long[] bestCounts;
    private long[] counts;
    private long tried;
    private int place;
    private int stepsLeft;
    private int stepsWhole = 1;

    Improver(Model model, Rows rows, Bounds bounds, long seed) {
        this.model = model;
        this.rows = rows;
        this.bounds = bounds;
        ranking = new Ranking(model);
        board = new Board(model);
        inserter = new Inserter(board, new Weighing(ranking.weights(), 0, Shake.NONE));
        random = new Random(seed);
        neighbours = new Neighbours(board, random);
        first();
        best = board.days();
        bestCounts = board.counts();
        counts = bestCounts.clone();
    }

    /** Packs one after the other, first those that a lock is about. */
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

    /** Takes a better plan from elsewhere. */
    void take(List<Day> days, long[] of) {
        best = days;
        bestCounts = of.clone();
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

    /**
     * Begins again from the best plan, with an eye on one goal.
     *
     * @param goal its place in the order
     * @param steps how many steps are meant to follow
     */
    void lookAt(int goal, int steps) {
        place = goal;
        stepsLeft = steps;
        stepsWhole = Math.max(1, steps);
        board.restore(best);
        counts = bestCounts.clone();
    }

    boolean isDoneLooking() {
        return stepsLeft <= 0;
    }

    /** Tries one change. Returns whether a better plan was found. */
    boolean step() {
        stepsLeft--;
        if (model.courses().isEmpty()) {
            return false;
        }
        tried++;
        List<Day> before = board.days();
        Weighing plain = new Weighing(weights(), freeFinish(), shake());
        Optional<Weighing> priced = random.nextBoolean() ? priced() : Optional.empty();
        inserter.weigh(priced.orElse(plain));
        Set<Integer> pulled = new LinkedHashSet<>();
        for (int pack : neighbours.choose()) {
            pulled.addAll(inserter.pull(pack));
        }
        List<Integer> order = new ArrayList<>(pulled);
        Collections.shuffle(order, random);
        order.forEach(inserter::insert);
        if (priced.isPresent()) {
            inserter.weigh(plain);
            order.forEach(this::again);
        }
        long[] after = board.counts();
        if (ranking.isWorse(after, counts, place, slack())) {
            board.restore(before);
            return false;
        }
        counts = after;
        if (ranking.compare(after, bestCounts) < 0) {
            best = board.days();
            bestCounts = after.clone();
            return true;
        }
        return false;
    }

    /** Pulls one pack and inserts it, and all pulled with it, anew. */
    private void again(int pack) {
        inserter.pull(pack).forEach(inserter::insert);
    }

    /** Prices behind the bound of the goal looked at, a little shaken; they stand for that goal and those before it. */
    private Optional<Weighing> priced() {
        double[] prices = bounds.prices(place);
        if (prices.length == 0) {
            return Optional.empty();
        }
        double[] weights = new double[Count.SIZE];
        double[] whole = ranking.weights();
        int count = Count.of(ranking.goal(place).goal());
        weights[Count.LOCKS] = whole[Count.LOCKS];
        weights[Count.STORAGE] = whole[Count.STORAGE];
        weights[count] = whole[count];
        for (int row = rows.run(0); row < rows.run(model.problem().runs().size()); row++) {
            prices[row] *= 0.9 + 0.4 * random.nextDouble();
        }
        return Optional.of(new PricedWeighing(model, rows, weights, prices, whole[count], freeFinish()));
    }

    private Shake shake() {
        return random.nextBoolean() ? Shake.NONE : new Shake(random.nextLong(), 0.3 * random.nextDouble());
    }

    /** What the finish may come to without being counted worse, once it is settled. */
    private int freeFinish() {
        for (int before = 0; before < place; before++) {
            GoalSetting setting = ranking.goal(before);
            if (setting.goal() == Goal.EARLIEST_FINISH) {
                return (int) (setting.units(bestCounts[Count.FINISH]) * setting.resolution());
            }
        }
        return 0;
    }

    /** How much worse a plan may be in the goal looked at; goes to nothing. */
    private double slack() {
        double left = Math.max(0, stepsLeft) / (double) stepsWhole;
        long of = Math.max(
                bestCounts[Count.of(ranking.goal(place).goal())],
                ranking.goal(place).resolution());
        return -Math.log(1 - random.nextDouble()) * FIRST_SLACK * left * left * of;
    }

    /**
     * Goals after the one looked at weigh in half of the steps only. Goals before it that are not told apart finely sometimes
     * weigh little, so that what their resolution leaves open is used.
     */
    private double[] weights() {
        double[] weights = ranking.weights();
        double unit = weights[Count.of(ranking.goal(place).goal())]
                * ranking.goal(place).resolution();
        for (int before = 0; before < place; before++) {
            GoalSetting setting = ranking.goal(before);
            if (setting.resolution() > 1 && random.nextInt(4) == 0) {
                weights[Count.of(setting.goal())] = unit * Math.exp(4 * random.nextGaussian()) / setting.resolution();
            }
        }
        for (int after = place + 1; after < ranking.depth(); after++) {
            if (random.nextBoolean()) {
                weights[Count.of(ranking.goal(after).goal())] = 0;
            }
        }
        return weights;
    }
}
