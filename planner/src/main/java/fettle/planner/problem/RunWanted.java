package fettle.planner.problem;

import java.util.List;

/**
 * A run somebody wants.
 *
 * @param name its name, unique
 * @param craft the craft; it makes one run at a time
 * @param value how much it is worth, in whole units ≥ 1
 * @param times when it may be
 * @param fits packs, or sets of packs, that can power it
 */
public record RunWanted(String name, String craft, int value, Times times, List<PackSet> fits) {
    public RunWanted {
        fits = List.copyOf(fits);
    }

    /**
     * When a run may be [min].
     *
     * @param earliestStart first minute it may start
     * @param latestStart last minute it may start
     * @param duration how long it takes
     * @param gapAfter how long its craft then rests before its next run
     */
    public record Times(int earliestStart, int latestStart, int duration, int gapAfter) {}
}
