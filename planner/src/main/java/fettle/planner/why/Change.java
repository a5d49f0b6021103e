package fettle.planner.why;

import fettle.planner.problem.OutingProblem;

/**
 * A change of the day that would make something possible.
 *
 * @param limit the limit it moves, in words
 * @param sentence the change, in words
 * @param problem the day with it
 */
public record Change(String limit, String sentence, OutingProblem problem) {}
