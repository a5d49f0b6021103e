package fettle.planner.validate;

import fettle.planner.problem.ChargeWay;
import fettle.planner.problem.GoalSetting;
import fettle.planner.problem.OutingProblem;
import fettle.planner.problem.PlanPack;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The best plan of a tiny problem, by trying every combination of every day of every pack. Shares no code with the search; a
 * combination is left early only when it is worse already, whatever follows.
 */
public final class Enumeration {
    private final OutingProblem problem;
    private final List<List<EnumeratedDay>> days = new ArrayList<>();
    private final Map<String, int[]> used = new HashMap<>();
    private final Map<String, Integer> joint = new HashMap<>();
    private final long totalValue;
    /** Of the packs from each one on: most value, least storage, least full. */
    private final long[][] rest;

    private long[] best;

    private Enumeration(OutingProblem problem) {
        this.problem = problem;
        totalValue = problem.runs().stream().mapToLong(run -> run.value()).sum();
        best = new long[problem.goals().size()];
        Arrays.fill(best, Long.MAX_VALUE);
        for (PlanPack pack : problem.packs()) {
            List<EnumeratedDay> all = new EnumeratedDays(problem, pack).all();
            all.sort(Comparator.comparingLong(day -> day.fullMinutes() - 200 * day.value() + 100 * day.storage()));
            days.add(all);
        }
        rest = new long[days.size() + 1][3];
        for (int pack = days.size() - 1; pack >= 0; pack--) {
            List<EnumeratedDay> all = days.get(pack);
            rest[pack][0] = rest[pack + 1][0]
                    + all.stream().mapToLong(EnumeratedDay::value).max().orElse(0);
            rest[pack][1] = rest[pack + 1][1]
                    + all.stream().mapToLong(EnumeratedDay::storage).min().orElse(0);
            rest[pack][2] = rest[pack + 1][2]
                    + all.stream().mapToLong(EnumeratedDay::fullMinutes).min().orElse(0);
        }
    }

    /** Units of every goal at best, whatever the packs that follow do. */
    private long[] hoped(int pack, long[] counts) {
        long[] hoped = counts.clone();
        hoped[1] += rest[pack][1];
        hoped[2] += rest[pack][2];
        return units(hoped, Math.min(totalValue, counts[0] + rest[pack][0]));
    }

    /** Units of every goal, in order, of the best plan. */
    public static long[] best(OutingProblem problem) {
        Enumeration enumeration = new Enumeration(problem);
        enumeration.descend(0, new long[6]);
        return enumeration.best;
    }

    /** Counts so far: value made, storage, full, stress, energy, finish; by the goals' ordinals. */
    private void descend(int pack, long[] counts) {
        if (pack == days.size()) {
            if (joint.values().stream().allMatch(missing -> missing == 0)) {
                long[] units = units(counts, counts[0]);
                best = compare(units, best) < 0 ? units : best;
            }
            return;
        }
        for (EnumeratedDay day : days.get(pack)) {
            List<EnumeratedItem> placed = new ArrayList<>();
            long[] next = counts.clone();
            next[1] += day.storage();
            next[2] += day.fullMinutes();
            boolean fits = true;
            for (EnumeratedItem item : day.items()) {
                fits = fits && place(item, placed, next);
            }
            if (fits && compare(hoped(pack + 1, next), best) < 0) {
                descend(pack + 1, next);
            }
            placed.forEach(this::take);
        }
    }

    private boolean place(EnumeratedItem item, List<EnumeratedItem> placed, long[] counts) {
        Integer missing = joint.get(item.name());
        boolean first = item.members() == 1 || missing == null || missing == 0;
        if (first && !item.fits(used, problem)) {
            return false;
        }
        if (item.members() > 1) {
            joint.put(item.name(), first ? item.members() - 1 : missing - 1);
        }
        placed.add(item);
        if (first) {
            item.use(used, 1);
            counts[0] += item.value();
            counts[3] += item.stress();
            counts[4] += item.fieldWattHours();
        }
        counts[5] = Math.max(counts[5], item.end());
        return true;
    }

    private void take(EnumeratedItem item) {
        if (item.members() == 1) {
            item.use(used, -1);
        } else if (joint.get(item.name()) == item.members() - 1) {
            joint.remove(item.name());
            item.use(used, -1);
        } else {
            joint.merge(item.name(), 1, Integer::sum);
        }
    }

    private long[] units(long[] counts, long valueMade) {
        long[] units = new long[problem.goals().size()];
        for (int i = 0; i < units.length; i++) {
            GoalSetting setting = problem.goals().get(i);
            int goal = setting.goal().ordinal();
            long count = goal == 0 ? totalValue - valueMade : counts[goal];
            units[i] = (count + setting.resolution() - 1) / setting.resolution();
        }
        return units;
    }

    private static int compare(long[] one, long[] other) {
        return Arrays.compare(one, other);
    }

    static double efficiency(OutingProblem problem, ChargeWay way) {
        return problem.means()
                .charger(problem.means().port(way.port()).charger())
                .efficiency();
    }
}
