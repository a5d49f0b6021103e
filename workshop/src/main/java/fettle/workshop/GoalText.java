package fettle.workshop;

import fettle.engine.units.InputException;
import fettle.planner.problem.Goal;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** The goals of a plan in words, most important first. */
public final class GoalText {
    private GoalText() {}

    /** The words of every goal in the usual order. */
    public static List<String> usual() {
        return Arrays.stream(Goal.values()).map(Goal::label).toList();
    }

    /** Keys of the goals typed one a line; those left out follow in their usual order. */
    static List<String> keys(String typed) {
        if (typed.isBlank()) {
            return List.of();
        }
        List<String> keys = TypedLines.read("goals", typed, GoalText::key);
        if (keys.stream().distinct().count() < keys.size()) {
            throw new InputException("goals", "a goal is named twice. Name each once.");
        }
        return keys;
    }

    static String label(String key) {
        return Goal.valueOf(key).label();
    }

    private static String key(String line) {
        return Arrays.stream(Goal.values())
                .filter(goal -> goal.label().equalsIgnoreCase(line.strip()))
                .findFirst()
                .map(Goal::name)
                .orElseThrow(() -> new InputException(
                        "goals",
                        "\"" + line.strip() + "\"; expected one of "
                                + usual().stream().collect(Collectors.joining("; ")) + "."));
    }
}
