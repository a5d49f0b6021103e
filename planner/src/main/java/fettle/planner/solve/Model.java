package fettle.planner.solve;

import fettle.planner.problem.OutingProblem;
import java.util.List;

/**
 * A problem made ready for searching: steps for minutes, indices for names.
 *
 * @param problem the problem
 * @param stepMinutes length of a step [min]
 * @param ticks number of steps
 * @param resources ports, then chargers' shared power, then sources' power
 * @param energyWattHours what each source gives over all [Wh]
 * @param crafts name of each craft
 * @param craftOf craft of each run
 * @param craftTicks steps each run keeps its craft
 * @param courses the packs
 * @param mandatory runs that a lock demands
 * @param lockCount locks that can be broken
 */
record Model(
        OutingProblem problem,
        int stepMinutes,
        int ticks,
        List<Resource> resources,
        int[] energyWattHours,
        List<String> crafts,
        int[] craftOf,
        int[] craftTicks,
        List<Course> courses,
        boolean[] mandatory,
        int lockCount) {

    /**
     * Something of which only so much can be used at once.
     *
     * @param kind what it is
     * @param name its name
     * @param capacity how much in each step
     */
    record Resource(Kind kind, String name, int[] capacity) {}

    /** Kinds of resources. */
    enum Kind {
        PORT,
        CHARGER,
        SOURCE
    }

    int horizonMinutes() {
        return problem.time().horizonMinutes();
    }

    long totalValue() {
        return problem.runs().stream().mapToLong(run -> run.value()).sum();
    }

    /** Counts of a plan in which nothing is done, as far as runs and locks go. */
    long[] emptyCounts() {
        long[] counts = new long[Count.SIZE];
        counts[Count.LOCKS] = lockCount;
        counts[Count.VALUE] = totalValue();
        return counts;
    }
}
