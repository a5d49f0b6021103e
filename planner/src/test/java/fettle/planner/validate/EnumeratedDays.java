package fettle.planner.validate;

import fettle.planner.problem.ChargeWay;
import fettle.planner.problem.Lock;
import fettle.planner.problem.OutingProblem;
import fettle.planner.problem.PackSet;
import fettle.planner.problem.Place;
import fettle.planner.problem.PlanPack;
import fettle.planner.problem.PowerSource;
import fettle.planner.problem.RunWanted;
import fettle.planner.problem.Target;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Every day one pack could have by itself. */
final class EnumeratedDays {
    private final OutingProblem problem;
    private final PlanPack pack;
    private final int step;
    private final int horizon;
    private final List<EnumeratedDay> all = new ArrayList<>();

    EnumeratedDays(OutingProblem problem, PlanPack pack) {
        this.problem = problem;
        this.pack = pack;
        step = problem.time().stepMinutes();
        horizon = problem.time().horizonMinutes();
    }

    /** Where a pack stands: since when at rest, from when usable, its charge, whether it may run. */
    private record State(int since, int free, double charge, boolean mayRun, long fullMinutes) {}

    List<EnumeratedDay> all() {
        boolean out = pack.barred() || problem.locks().contains(new Lock.PackNot(pack.tag()));
        if (out) {
            return new ArrayList<>(List.of(new EnumeratedDay(List.of(), 0, 0)));
        }
        follow(new State(0, Math.max(0, pack.times().freeAtMinute()), pack.chargeFraction(), true, 0), List.of());
        return all;
    }

    private void follow(State state, List<EnumeratedItem> items) {
        boolean stored = state.charge >= pack.levels().storageLow() - 1e-9
                && state.charge <= pack.levels().storageHigh() + 1e-9;
        boolean late = !items.isEmpty() && state.since > pack.times().storageByMinute();
        int storage = !stored ? 2 : late ? 1 : 0;
        all.add(new EnumeratedDay(items, state.fullMinutes + full(state, horizon), storage));
        for (ChargeWay way : problem.means().ways()) {
            if (way.packs().equals(List.of(pack.tag()))) {
                charge(state, items, way, Target.FULL, pack.levels().fullFraction());
                if (!stored) {
                    charge(state, items, way, Target.STORAGE, pack.levels().storageTarget());
                }
            }
        }
        if (state.mayRun) {
            problem.runs().forEach(run -> run.fits().forEach(set -> run(state, items, run, set)));
        }
    }

    private long full(State state, int until) {
        double border = (pack.levels().storageHigh() + pack.levels().fullFraction()) / 2;
        return state.charge > border ? (long) (until - state.since) * pack.fullWeight() : 0;
    }

    private void charge(State state, List<EnumeratedItem> items, ChargeWay way, Target target, double to) {
        CurveWalk walk = new CurveWalk(way.curve(), state.charge, to);
        if (!walk.isPossible() || Math.abs(state.charge - to) < 1e-9) {
            return;
        }
        int minutes = Math.max(1, (int) Math.ceil(walk.minutes() - 1e-9));
        for (int start = 0; start < horizon; start += step) {
            if (start >= state.free && isAttended(way, start, start + minutes)) {
                EnumeratedItem item = item(way, walk, target, start, minutes);
                long fullMinutes = state.fullMinutes + full(state, start);
                int end = start + minutes;
                follow(
                        new State(end, end + pack.times().restMinutes(), to, target == Target.FULL, fullMinutes),
                        with(items, item));
            }
        }
    }

    private boolean isAttended(ChargeWay way, int start, int end) {
        PowerSource source = source(way);
        return isThere(source.place(), start, end)
                && (source.available().isEmpty()
                        || source.available().stream().anyMatch(span -> span.covers(start, end)));
    }

    private boolean isThere(Place place, int start, int end) {
        return problem.presence().stream()
                .anyMatch(here -> here.place() == place && here.span().covers(start, end));
    }

    private PowerSource source(ChargeWay way) {
        return problem.means()
                .source(problem.means()
                        .charger(problem.means().port(way.port()).charger())
                        .source());
    }

    /** Power within a step is the most of any of its minutes, in whole watts rounded up. */
    private EnumeratedItem item(ChargeWay way, CurveWalk walk, Target target, int start, int minutes) {
        double efficiency = Enumeration.efficiency(problem, way);
        int steps = (horizon + step - 1) / step;
        int[] port = new int[steps];
        int[] out = new int[steps];
        int[] in = new int[steps];
        for (int minute = 0; minute < minutes; minute++) {
            int at = (start + minute) / step;
            port[at] = 1;
            out[at] = Math.max(out[at], (int) Math.ceil(walk.watts(minute) - 1e-9));
            in[at] = Math.max(in[at], (int) Math.ceil(walk.watts(minute) / efficiency - 1e-9));
        }
        int wattHours = (int) Math.ceil(walk.wattHours() / efficiency - 1e-9);
        int[] energy = new int[steps];
        energy[0] = wattHours;
        PowerSource source = source(way);
        Map<String, int[]> takes = new HashMap<>();
        takes.put("port " + way.port(), port);
        takes.put("charger " + problem.means().port(way.port()).charger(), out);
        takes.put("source " + source.name(), in);
        takes.put("energy " + source.name(), energy);
        int field = source.place() == Place.FIELD ? wattHours : 0;
        String name = way.name() + target + start;
        return new EnumeratedItem(name, start + minutes, 1, 0, way.stress(), field, takes);
    }

    private void run(State state, List<EnumeratedItem> items, RunWanted run, PackSet set) {
        int minutes = run.times().duration();
        for (PackSet.Take take : set.takes()) {
            double left = state.charge - take.fraction();
            if (take.pack().equals(pack.tag()) && left >= pack.levels().reserveFraction() - 1e-9) {
                for (int start = 0; start < horizon; start += step) {
                    boolean within = start >= run.times().earliestStart()
                            && start <= run.times().latestStart();
                    if (within && start >= state.free && isThere(Place.FIELD, start, start + minutes)) {
                        int end = start + minutes;
                        long fullMinutes = state.fullMinutes + full(state, start);
                        follow(
                                new State(end, end + pack.times().coolMinutes(), left, false, fullMinutes),
                                with(items, item(run, set, start)));
                    }
                }
            }
        }
    }

    private EnumeratedItem item(RunWanted run, PackSet set, int start) {
        int steps = (horizon + step - 1) / step;
        int[] craft = new int[steps];
        int end = start + run.times().duration() + run.times().gapAfter();
        for (int minute = start; minute < Math.min(end, horizon); minute++) {
            craft[minute / step] = 1;
        }
        int[] once = new int[steps];
        once[0] = 1;
        Map<String, int[]> takes = Map.of("craft " + run.craft(), craft, "run " + run.name(), once);
        String name = run.name() + set.tags() + start;
        return new EnumeratedItem(
                name, start + run.times().duration(), set.takes().size(), run.value(), 0, 0, takes);
    }

    private static List<EnumeratedItem> with(List<EnumeratedItem> items, EnumeratedItem item) {
        List<EnumeratedItem> longer = new ArrayList<>(items);
        longer.add(item);
        return longer;
    }
}
