package fettle.planner.solve;

import fettle.planner.problem.PlanPack;
import java.util.Arrays;
import java.util.List;

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
        int[][][] at = new int[levels.size()][ticks][0];
        for (int number = 0; number < options.size(); number++) {
            Option option = options.get(number);
            for (int tick : option.starts()) {
                int[] before = at[option.from()][tick];
                int[] longer = Arrays.copyOf(before, before.length + 1);
                longer[before.length] = number;
                at[option.from()][tick] = longer;
            }
        }
        return new Course(index, pack, List.copyOf(levels), List.copyOf(options), at, freeTick);
    }

    boolean offers(Option.Key key) {
        return options.stream().anyMatch(option -> option.key().equals(key));
    }
}
