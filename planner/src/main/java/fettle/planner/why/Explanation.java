package fettle.planner.why;

import java.util.List;

/**
 * Why something is not in a plan.
 *
 * @param subject the pack, run or lock asked about
 * @param reason what binds, in a sentence
 * @param changes single changes that would make it possible, the smallest first; empty where none of those tried does
 */
public record Explanation(String subject, String reason, List<Change> changes) {
    public Explanation {
        changes = List.copyOf(changes);
    }
}
