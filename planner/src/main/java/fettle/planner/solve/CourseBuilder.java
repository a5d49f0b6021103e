package fettle.planner.solve;

import fettle.planner.problem.Lock;
import fettle.planner.problem.PackSet;
import fettle.planner.problem.Place;
import fettle.planner.problem.PlanPack;
import fettle.planner.problem.Presence;
import fettle.planner.problem.RunWanted;
import fettle.planner.problem.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Finds all that can be done with one pack. */
final class CourseBuilder {
    private static final double SAME = 1e-9;

    private final ModelBuilder model;
    private final PlanPack pack;
    private final int index;
    private final boolean[] mandatory;
    private final List<Level> levels = new ArrayList<>();
    private final List<Option> options = new ArrayList<>();

    CourseBuilder(ModelBuilder model, PlanPack pack, int index, boolean[] mandatory) {
        this.model = model;
        this.pack = pack;
        this.index = index;
        this.mandatory = mandatory;
    }

    Course build() {
        add(pack.chargeFraction());
        boolean isFull = pack.chargeFraction() >= pack.levels().fullFraction() - SAME;
        int full = isFull ? 0 : level(pack.levels().fullFraction());
        level(pack.levels().storageTarget());
        addRuns(0);
        if (full != 0) {
            addRuns(full);
        }
        ChargeOptions charges = new ChargeOptions(model, pack);
        for (int from = 0; from < levels.size(); from++) {
            addCharges(charges, from, full);
        }
        int free = Ticks.up(Math.max(0, pack.times().freeAtMinute()), model.stepMinutes());
        return Course.of(index, pack, levels, AlikeOptions.merged(options), free, model.ticks());
    }

    private void addCharges(ChargeOptions charges, int from, int full) {
        double fraction = levels.get(from).fraction();
        for (int way : model.waysOf(pack.tag())) {
            if (from == 0 || model.way(way).packs().size() == 1) {
                if (fraction < levels.get(full).fraction() - SAME) {
                    options.addAll(charges.of(way, fraction, from, full, Target.FULL));
                }
                if (!levels.get(from).stored()) {
                    int target = level(pack.levels().storageTarget());
                    options.addAll(charges.of(way, fraction, from, target, Target.STORAGE));
                }
            }
        }
    }

    /** The level of a charge that is reached; the first level stays the pack's charge now, from which it may still run. */
    private int level(double fraction) {
        for (int i = 1; i < levels.size(); i++) {
            if (Math.abs(levels.get(i).fraction() - fraction) < SAME) {
                return i;
            }
        }
        return add(fraction);
    }

    private int add(double fraction) {
        PlanPack.Levels of = pack.levels();
        boolean full = fraction > 0.5 * (of.storageHigh() + of.fullFraction());
        levels.add(new Level(fraction, full, pack.stored(fraction)));
        return levels.size() - 1;
    }

    private void addRuns(int from) {
        double charge = levels.get(from).fraction();
        List<RunWanted> runs = model.problem().runs();
        for (int run = 0; run < runs.size(); run++) {
            for (PackSet set : runs.get(run).fits()) {
                for (PackSet.Take take : set.takes()) {
                    boolean enough = charge - take.fraction() >= pack.levels().reserveFraction() - SAME;
                    if (take.pack().equals(pack.tag()) && enough && isAllowed(runs.get(run), set)) {
                        addRun(run, set, from, level(charge - take.fraction()));
                    }
                }
            }
        }
    }

    private boolean isAllowed(RunWanted run, PackSet set) {
        return set.tags().stream().noneMatch(model::isExcluded)
                && model.problem().locks().stream()
                        .noneMatch(lock ->
                                lock instanceof Lock.RunNot not && not.run().equals(run.name())
                                        || lock instanceof Lock.RunWith with
                                                && with.run().equals(run.name())
                                                && !Set.copyOf(with.packs()).equals(Set.copyOf(set.tags())));
    }

    private void addRun(int run, PackSet set, int from, int to) {
        RunWanted wanted = model.problem().runs().get(run);
        int step = model.stepMinutes();
        int minutes = wanted.times().duration();
        long[] counts = new long[Count.SIZE];
        counts[Count.VALUE] = -wanted.value();
        counts[Count.LOCKS] = mandatory[run] ? -1 : 0;
        options.add(new Option(
                new Option.Key(wanted.name() + " with " + String.join(" and ", set.tags()), 0, false),
                run,
                List.of(),
                from,
                to,
                minutes,
                Ticks.up(minutes, step),
                Ticks.up(minutes + pack.times().coolMinutes(), step),
                List.of(),
                -1,
                0,
                counts,
                set.takes().size(),
                starts(wanted)));
    }

    private int[] starts(RunWanted wanted) {
        return IntStream.range(0, model.ticks())
                .filter(tick -> mayStart(wanted, tick * model.stepMinutes()))
                .toArray();
    }

    private boolean mayStart(RunWanted wanted, int start) {
        return start >= wanted.times().earliestStart()
                && start <= wanted.times().latestStart()
                && isAttended(start, start + wanted.times().duration())
                && model.problem().locks().stream()
                        .noneMatch(lock -> lock instanceof Lock.RunAt at
                                && at.run().equals(wanted.name())
                                && at.startMinute() != start);
    }

    private boolean isAttended(int from, int to) {
        for (Presence presence : model.problem().presence()) {
            if (presence.place() == Place.FIELD && presence.span().covers(from, to)) {
                return true;
            }
        }
        return false;
    }
}
