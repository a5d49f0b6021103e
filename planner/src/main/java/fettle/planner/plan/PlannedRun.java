package fettle.planner.plan;

import java.util.List;

/**
 * One run of a plan.
 *
 * @param run name of the run wanted
 * @param craft the craft
 * @param packs tags of the packs that power it
 * @param startMinute when it starts
 * @param endMinute when it ends
 */
public record PlannedRun(String run, String craft, List<String> packs, int startMinute, int endMinute) {
    public PlannedRun {
        packs = List.copyOf(packs);
    }
}
