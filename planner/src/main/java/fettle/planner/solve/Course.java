package fettle.planner.solve;

import fettle.planner.problem.PlanPack;
import java.util.List;
import java.util.stream.IntStream;

/**
 * All that can be done with one pack.
 *
 * @param index the pack's index
 * @param pack the pack
 * @param levels charges it can be left at; the first is its charge now
 * @param options what can be done
 * @param byLevel indices of the options that start at each level
 * @param freeTick first step at which it is free
 */
record Course(int index, PlanPack pack, List<Level> levels, List<Option> options, int[][] byLevel, int freeTick) {

    static Course of(int index, PlanPack pack, List<Level> levels, List<Option> options, int freeTick) {
        int[][] byLevel = new int[levels.size()][];
        for (int from = 0; from < byLevel.length; from++) {
            int level = from;
            byLevel[from] = IntStream.range(0, options.size())
                    .filter(option -> options.get(option).from() == level)
                    .toArray();
        }
        return new Course(index, pack, List.copyOf(levels), List.copyOf(options), byLevel, freeTick);
    }

    boolean offers(Option.Key key) {
        return options.stream().anyMatch(option -> option.key().equals(key));
    }

    Course with(List<Option> others) {
        return of(index, pack, levels, others, freeTick);
    }
}
