package fettle.desk.outing;

import fettle.engine.outing.KeptPlan;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One outing with its plan.
 *
 * @param name its name
 * @param encoded its name in an address
 * @param when its day and times
 * @param facts what was typed, label and text
 * @param settled what is settled
 * @param made when the plan was made, and how long it took; empty before the first
 * @param outdated what changed since; empty if nothing
 * @param sheet the day sheet; {@code null} before the first plan
 * @param runs the planned runs
 * @param charges the planned charges
 * @param goals what the goals came to
 * @param remarks what was left out
 * @param inputs what the plan was made from
 * @param searching a search that goes on or was refused; {@code null} if none
 * @param asked what was asked with why; empty if nothing
 * @param reasons the answer
 * @param typed what was typed to settle and refused; empty if nothing
 * @param faults why
 * @param putAway whether it is put away
 */
public record OutingPage(
        String name,
        String encoded,
        String when,
        List<Fact> facts,
        List<String> settled,
        String made,
        String outdated,
        @Nullable DaySheet sheet,
        List<Line> runs,
        List<Line> charges,
        List<GoalLine> goals,
        List<String> remarks,
        List<String> inputs,
        @Nullable SearchPart searching,
        String asked,
        List<String> reasons,
        String typed,
        List<String> faults,
        boolean putAway) {

    /** A fact as typed. */
    public record Fact(String label, String text) {}

    /** One run or charge. */
    public record Line(String when, String what, String packs, String detail) {}

    /** One goal. */
    public record GoalLine(String goal, String came, String sure) {}

    /**
     * A search in the background.
     *
     * @param encoded the outing's name in an address
     * @param running whether it goes on
     * @param words how far it has come
     * @param trouble why it was refused; empty unless it was
     * @param goals what the best plan so far comes to
     */
    public record SearchPart(String encoded, boolean running, String words, String trouble, List<GoalLine> goals) {
        public SearchPart {
            goals = List.copyOf(goals);
        }
    }

    static GoalLine goal(KeptPlan.GoalReached goal) {
        String sure = goal.proven()
                ? "proven best"
                : "at most " + Math.round(Math.ceil(100 * goal.gapFraction())) + " % from the best";
        return new GoalLine(goal.goal(), goal.came(), sure);
    }
}
