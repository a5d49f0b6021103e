package fettle.workshop.outing;

import fettle.engine.outing.Outing;
import fettle.planner.problem.OutingProblem;
import java.util.List;

/**
 * An outing as a problem, with what connects the two.
 *
 * @param outing the outing
 * @param kit what it is planned with
 * @param clock its minutes
 * @param problem the problem
 * @param inputs what it was made from, a line each
 * @param remarks what was left out of it, with the reason
 */
public record PlanningCase(
        Outing outing, DayKit kit, DayClock clock, OutingProblem problem, List<String> inputs, List<String> remarks) {
    public PlanningCase {
        inputs = List.copyOf(inputs);
        remarks = List.copyOf(remarks);
    }
}
