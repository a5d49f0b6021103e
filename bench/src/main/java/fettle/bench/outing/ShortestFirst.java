package fettle.bench.outing;

import fettle.planner.plan.ChargeJob;
import fettle.planner.plan.PlannedRun;
import fettle.planner.problem.ChargeCurve.Direction;
import fettle.planner.problem.ChargeWay;
import fettle.planner.problem.OutingProblem;
import fettle.planner.problem.PackSet;
import fettle.planner.problem.Place;
import fettle.planner.problem.PlanPack;
import fettle.planner.problem.RunWanted;
import fettle.planner.problem.Target;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a careful person does without a planner: at home the shortest charge first, each as soon as a port and the supply allow;
 * runs by value, each as soon as it may be with a pack that is full; then packs to storage, the shortest first.
 */
final class ShortestFirst {
    private final OutingProblem problem;
    private final int step;
    private final List<ChargeJob> charges = new ArrayList<>();
    private final List<PlannedRun> runs = new ArrayList<>();
    private final Map<String, boolean[]> busy = new HashMap<>();
    private final Map<String, int[]> watts = new HashMap<>();
    private final Map<String, Integer> fullFrom = new HashMap<>();

    ShortestFirst(OutingProblem problem) {
        this.problem = problem;
        step = problem.time().stepMinutes();
        problem.packs().stream()
                .sorted(Comparator.comparingInt(pack -> shortest(pack, pack.chargeFraction(), 1.0)))
                .forEach(pack -> charge(pack, pack.chargeFraction(), 1.0, 0, Target.FULL));
        problem.runs().stream()
                .sorted(Comparator.comparingInt(run -> -run.value()))
                .forEach(this::fly);
        for (PlanPack pack : problem.packs()) {
            double now = now(pack);
            if (!pack.stored(now)) {
                charge(pack, now, pack.levels().storageTarget(), busyUntil(pack), Target.STORAGE);
            }
        }
    }

    List<ChargeJob> charges() {
        return charges;
    }

    List<PlannedRun> runs() {
        return runs;
    }

    private List<ChargeWay> ways(PlanPack pack, double from, double to) {
        Direction direction = to > from ? Direction.FILLING : Direction.EMPTYING;
        return problem.means().ways().stream()
                .filter(way -> way.packs().equals(List.of(pack.tag()))
                        && way.stress() == 0
                        && way.curve().direction() == direction)
                .toList();
    }

    private int shortest(PlanPack pack, double from, double to) {
        return ways(pack, from, to).stream()
                .mapToInt(way -> Charge.of(problem, way, from, to).minutes())
                .min()
                .orElse(0);
    }

    private void charge(PlanPack pack, double from, double to, int notBefore, Target target) {
        int horizon = problem.time().horizonMinutes();
        for (int start = (notBefore + step - 1) / step * step; start < horizon; start += step) {
            for (ChargeWay way : ways(pack, from, to)) {
                Charge charge = Charge.of(problem, way, from, to);
                if (fits(charge, start)) {
                    place(pack, charge, start, target);
                    return;
                }
            }
        }
    }

    private String source(ChargeWay way) {
        return problem.means()
                .charger(problem.means().port(way.port()).charger())
                .source();
    }

    private boolean fits(Charge charge, int start) {
        String source = source(charge.way());
        Place place = problem.means().source(source).place();
        int end = start + charge.minutes();
        boolean fits = place == Place.HOME && there(place, start, end);
        for (int at = 0; fits && at < charge.steps(); at++) {
            int used = use(source)[start / step + at] + charge.sourceWatts()[at];
            fits = !port(charge.way())[start / step + at]
                    && used <= problem.means().source(source).limitWatts();
        }
        return fits;
    }

    private boolean there(Place place, int start, int end) {
        return problem.presence().stream()
                .anyMatch(here -> here.place() == place && here.span().covers(start, end));
    }

    private boolean[] port(ChargeWay way) {
        return busy.computeIfAbsent(
                way.port(), name -> new boolean[problem.time().horizonMinutes() / step + 1]);
    }

    private int[] use(String source) {
        return watts.computeIfAbsent(source, name -> new int[problem.time().horizonMinutes() / step + 1]);
    }

    private void place(PlanPack pack, Charge charge, int start, Target target) {
        for (int at = 0; at < charge.steps(); at++) {
            port(charge.way())[start / step + at] = true;
            use(source(charge.way()))[start / step + at] += charge.sourceWatts()[at];
        }
        int end = start + charge.minutes();
        charges.add(new ChargeJob(
                charge.way().name(),
                List.of(pack.tag()),
                charge.way().port(),
                target,
                start,
                end,
                charge.from(),
                charge.to(),
                0));
        if (target == Target.FULL) {
            fullFrom.put(pack.tag(), end + pack.times().restMinutes());
        }
    }

    private void fly(RunWanted run) {
        Set<String> used = new HashSet<>();
        runs.forEach(made -> used.addAll(made.packs()));
        int last = run.times().latestStart();
        for (int start = run.times().earliestStart(); start <= last; start += step) {
            for (PackSet set : run.fits()) {
                String tag = set.tags().get(0);
                int ready = fullFrom.getOrDefault(tag, Integer.MAX_VALUE);
                if (!used.contains(tag) && ready <= start && craftFree(run, start)) {
                    runs.add(new PlannedRun(
                            run.name(),
                            run.craft(),
                            List.of(tag),
                            start,
                            start + run.times().duration()));
                    return;
                }
            }
        }
    }

    private boolean craftFree(RunWanted run, int start) {
        int length = run.times().duration() + run.times().gapAfter();
        return there(Place.FIELD, start, start + run.times().duration())
                && runs.stream()
                        .noneMatch(made -> made.craft().equals(run.craft())
                                && made.startMinute() < start + length
                                && start < made.startMinute() + length);
    }

    private double now(PlanPack pack) {
        for (PlannedRun made : runs) {
            if (made.packs().contains(pack.tag())) {
                return 1
                        - problem.runs().stream()
                                .filter(run -> run.name().equals(made.run()))
                                .flatMap(run -> run.fits().stream())
                                .flatMap(set -> set.takes().stream())
                                .filter(take -> take.pack().equals(pack.tag()))
                                .mapToDouble(PackSet.Take::fraction)
                                .findFirst()
                                .orElseThrow();
            }
        }
        return fullFrom.containsKey(pack.tag()) ? 1 : pack.chargeFraction();
    }

    private int busyUntil(PlanPack pack) {
        int charged = fullFrom.getOrDefault(pack.tag(), 0);
        int flown = runs.stream()
                .filter(made -> made.packs().contains(pack.tag()))
                .mapToInt(made -> made.endMinute() + pack.times().coolMinutes())
                .max()
                .orElse(0);
        return Math.max(charged, flown);
    }
}
