package fettle.planner.validate;

import fettle.planner.problem.OutingProblem;
import java.util.Map;

/**
 * One charge or run.
 *
 * @param name run or way with its start, the same for all packs in it
 * @param end its last minute
 * @param members packs in it
 * @param takes resource and what is taken of it in each step, by step; energy and runs at step 0
 */
record EnumeratedItem(
        String name, int end, int members, int value, int stress, int fieldWattHours, Map<String, int[]> takes) {

    boolean fits(Map<String, int[]> used, OutingProblem problem) {
        return takes.entrySet().stream().allMatch(take -> {
            int limit = limit(take.getKey(), problem);
            int[] before = used.getOrDefault(take.getKey(), new int[take.getValue().length]);
            for (int step = 0; step < before.length; step++) {
                if (take.getValue()[step] > 0 && before[step] + take.getValue()[step] > limit) {
                    return false;
                }
            }
            return true;
        });
    }

    private static int limit(String resource, OutingProblem problem) {
        String name = resource.substring(resource.indexOf(' ') + 1);
        if (resource.startsWith("charger ")) {
            Integer shared = problem.means().charger(name).sharedWatts();
            return shared == null ? Integer.MAX_VALUE : shared;
        } else if (resource.startsWith("source ")) {
            return problem.means().source(name).limitWatts();
        } else if (resource.startsWith("energy ")) {
            Integer energy = problem.means().source(name).energyWattHours();
            return energy == null ? Integer.MAX_VALUE : energy;
        }
        return 1;
    }

    void use(Map<String, int[]> used, int sign) {
        takes.forEach((resource, take) -> {
            int[] sum = used.computeIfAbsent(resource, unseen -> new int[take.length]);
            for (int step = 0; step < take.length; step++) {
                sum[step] += sign * take[step];
            }
        });
    }
}
