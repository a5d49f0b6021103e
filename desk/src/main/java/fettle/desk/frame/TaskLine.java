package fettle.desk.frame;

import fettle.engine.charge.Task;
import fettle.engine.working.Working;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A task ready to be shown.
 *
 * @param kind what sort of work
 * @param instruction what to do
 * @param reason why
 * @param due when, seen from now
 * @param caution what belongs to the action; empty where the line above it already says so
 * @param pressing whether it is due within a day or overdue
 * @param working how its numbers were reached
 */
public record TaskLine(
        String kind, String instruction, String reason, String due, String caution, boolean pressing, Working working) {
    private static final Duration PRESSING = Duration.ofDays(1);

    /** The tasks of one pack, in their order. */
    public static List<TaskLine> ofPack(List<Task> tasks, Figures figures) {
        Set<String> told = new HashSet<>();
        return tasks.stream()
                .map(task -> line(task, told.add(task.caution()) ? task.caution() : "", figures))
                .toList();
    }

    private static TaskLine line(Task task, String caution, Figures figures) {
        boolean pressing =
                task.due() != null && task.due().isBefore(figures.now().plus(PRESSING));
        return new TaskLine(
                task.kind().word(),
                Figures.unbroken(task.instruction()),
                Figures.unbroken(task.reason()),
                figures.due(task.due()),
                Figures.unbroken(caution),
                pressing,
                task.working());
    }
}
