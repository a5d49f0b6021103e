package fettle.planner.solve;

import fettle.planner.problem.PlanPack;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * All that can be done with one pack.
 *
 * @param index the pack's index
 * @param pack the pack
 * @param levels charges it can be left at; the first is its charge now
 * @param options what can be done
 * @param at indices of the options that may start at each level and step
 * @param freeTick first step at which it is free
 */
record Course(int index, PlanPack pack, List<Level> levels, List<Option> options, int[][][] at, int freeTick) {

    static Course of(Course other, List<Option> options) {
        return of(other.index, other.pack, other.levels, options, other.freeTick, other.at[0].length);
    }

    static Course of(int index, PlanPack pack, List<Level> levels, List<Option> options, int freeTick, int ticks) {
        int[][][] at = new int[levels.size()][ticks][];
        for (int from = 0; from < at.length; from++) {
            for (int tick = 0; tick < ticks; tick++) {
                at[from][tick] = starting(options, from, tick);
            }
        }
        return new Course(index, pack, List.copyOf(levels), List.copyOf(options), at, freeTick);
    }

    private static int[] starting(List<Option> options, int from, int tick) {
        return IntStream.range(0, options.size())
                .filter(option -> options.get(option).from() == from
                        && Arrays.binarySearch(options.get(option).starts(), tick) >= 0)
                .toArray();
    }

    boolean offers(Option.Key key) {
        return options.stream().anyMatch(option -> option.key().equals(key));
    }
}
