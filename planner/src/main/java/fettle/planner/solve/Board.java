package fettle.planner.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** A plan in the making: every pack's day, and what is still free of resources, energy, runs and craft. Not thread-safe. */
final class Board {
    /** No place at all. */
    static final int NOWHERE = -1;

    private final Model model;
    private final @Nullable Day[] days;
    private final int[][] free;
    private final int[] energy;
    private final boolean[][] craftBusy;
    private final boolean[] runDone;
    private final Map<Item.Shared, Joint> joint = new HashMap<>();

    /** Packs placed of something done together, and its place. */
    private record Joint(int packs, int place) {}

    Board(Model model) {
        this.model = model;
        days = new Day[model.courses().size()];
        free = model.resources().stream()
                .map(resource -> resource.capacity().clone())
                .toArray(int[][]::new);
        energy = model.energyWattHours().clone();
        craftBusy = new boolean[model.crafts().size()][model.ticks()];
        runDone = new boolean[model.problem().runs().size()];
    }

    Model model() {
        return model;
    }

    /** The day of a pack; null while it has none. */
    @Nullable
    Day day(int pack) {
        return days[pack];
    }

    /** Every pack's day; an empty one where it has none. */
    List<Day> days() {
        List<Day> placed = new ArrayList<>();
        for (int pack = 0; pack < days.length; pack++) {
            Day day = days[pack];
            placed.add(day == null ? new Day(model.courses().get(pack), List.of()) : day);
        }
        return placed;
    }

    /** Goes back to days kept before. */
    void restore(List<Day> kept) {
        for (int pack = 0; pack < days.length; pack++) {
            remove(pack);
        }
        kept.forEach(this::place);
    }

    /** Places a day whose items are on ports that are free. */
    void place(Day day) {
        days[day.course().index()] = day;
        for (Item item : day.items()) {
            boolean first = !item.option().isJoint() || join(item) == 1;
            if (first) {
                occupy(item, 1);
            }
        }
    }

    private int join(Item item) {
        Joint now = joint.get(item.shared());
        int packs = now == null ? 1 : now.packs() + 1;
        joint.put(item.shared(), new Joint(packs, item.place()));
        return packs;
    }

    private int leave(Item item) {
        Joint now = joint.get(item.shared());
        int packs = now == null ? 0 : now.packs() - 1;
        if (packs <= 0) {
            joint.remove(item.shared());
        } else {
            joint.put(item.shared(), new Joint(packs, item.place()));
        }
        return packs;
    }

    void remove(int pack) {
        Day day = days[pack];
        if (day == null) {
            return;
        }
        days[pack] = null;
        for (Item item : day.items()) {
            boolean last = !item.option().isJoint() || leave(item) == 0;
            if (last) {
                occupy(item, -1);
            }
        }
    }

    private void occupy(Item item, int sign) {
        Option option = item.option();
        for (Use use : option.uses()) {
            int[] left = free[use.resource()];
            for (int i = 0; i < use.amounts().length; i++) {
                left[item.tick() + i] -= sign * use.amounts()[i];
            }
        }
        if (option.isRun()) {
            runDone[option.run()] = sign > 0;
            int to = Math.min(model.ticks(), item.tick() + model.craftTicks()[option.run()]);
            Arrays.fill(craftBusy[model.craftOf()[option.run()]], item.tick(), to, sign > 0);
        } else {
            int[] port = free[item.port().port()];
            Arrays.fill(port, item.tick(), item.tick() + option.ticks(), sign > 0 ? 0 : 1);
            if (energy[option.source()] < Integer.MAX_VALUE) {
                energy[option.source()] -= sign * option.wattHours();
            }
        }
    }

    /** Packs of a joint thing placed so far. */
    int placed(Item.Shared shared) {
        Joint now = joint.get(shared);
        return now == null ? 0 : now.packs();
    }

    /**
     * Where an option can start at a step beside all that is placed.
     *
     * @return one of its places, 0 for a run; −1 if it cannot
     */
    int fit(Option option, int tick) {
        if (option.isJoint()) {
            Joint now = joint.get(new Item.Shared(option.key(), tick));
            if (now != null) {
                return now.place();
            }
        }
        if (option.isRun()) {
            return runFits(option, tick) ? 0 : NOWHERE;
        }
        return energy[option.source()] >= option.wattHours() && usesFit(option, tick) ? port(option, tick) : NOWHERE;
    }

    /** All places where an option can start at a step; 0 for a run or where it is settled by a partner. */
    List<Integer> fits(Option option, int tick) {
        int first = fit(option, tick);
        if (first == NOWHERE) {
            return List.of();
        }
        if (option.isRun() || option.isJoint() && placed(new Item.Shared(option.key(), tick)) > 0) {
            return List.of(first);
        }
        return IntStream.range(first, option.places().size())
                .filter(place -> isFree(option, tick, place))
                .boxed()
                .toList();
    }

    private boolean runFits(Option option, int tick) {
        if (runDone[option.run()]) {
            return false;
        }
        boolean[] busy = craftBusy[model.craftOf()[option.run()]];
        int to = Math.min(model.ticks(), tick + model.craftTicks()[option.run()]);
        for (int at = tick; at < to; at++) {
            if (busy[at]) {
                return false;
            }
        }
        return true;
    }

    private boolean usesFit(Option option, int tick) {
        for (Use use : option.uses()) {
            int[] left = free[use.resource()];
            int[] amounts = use.amounts();
            for (int i = 0; i < amounts.length; i++) {
                if (left[tick + i] < amounts[i]) {
                    return false;
                }
            }
        }
        return true;
    }

    private int port(Option option, int tick) {
        for (int place = 0; place < option.places().size(); place++) {
            if (isFree(option, tick, place)) {
                return place;
            }
        }
        return NOWHERE;
    }

    private boolean isFree(Option option, int tick, int place) {
        int[] left = free[option.places().get(place).port()];
        int at = tick;
        while (at < tick + option.ticks() && left[at] > 0) {
            at++;
        }
        return at == tick + option.ticks();
    }

    /** End of the last thing placed [min]. */
    int finishMinute() {
        int finish = 0;
        for (Day day : days()) {
            for (Item item : day.items()) {
                finish = Math.max(finish, item.endMinute(model.stepMinutes()));
            }
        }
        return finish;
    }

    /** All counts. */
    long[] counts() {
        return counts(days());
    }

    /** Counts of the first packs alone, so many of them. */
    long[] placedCounts(int packs) {
        return counts(days().subList(0, packs));
    }

    private long[] counts(List<Day> of) {
        long[] counts = model.emptyCounts();
        Map<Item.Shared, Boolean> seen = new HashMap<>();
        for (Day day : of) {
            counts[Count.FULL] += day.fullMinutes(model.stepMinutes(), model.horizonMinutes());
            counts[Count.STORAGE] += day.storage(model.stepMinutes());
            for (Item item : day.items()) {
                if (!item.option().isJoint() || seen.put(item.shared(), true) == null) {
                    for (int count = 0; count < counts.length; count++) {
                        counts[count] += item.option().counts()[count];
                    }
                }
            }
        }
        counts[Count.FINISH] = finishMinute();
        return counts;
    }
}
