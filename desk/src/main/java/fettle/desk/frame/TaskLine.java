package fettle.desk.frame;

import fettle.engine.charge.Task;
import fettle.engine.working.Working;
import java.time.Duration;

/** A task ready to be shown; {@code pressing} if it is due within a day or overdue. */
public record TaskLine(
        String kind,
        String packTag,
        String href,
        String instruction,
        String reason,
        String due,
        String caution,
        boolean pressing,
        Working working) {
    private static final Duration PRESSING = Duration.ofDays(1);

    public static TaskLine of(Task task, Figures figures) {
        boolean pressing =
                task.due() != null && task.due().isBefore(figures.now().plus(PRESSING));
        return new TaskLine(
                task.kind().word(),
                task.packTag(),
                "/kit/packs/" + task.packTag(),
                task.instruction(),
                task.reason(),
                figures.due(task.due()),
                task.caution(),
                pressing,
                task.working());
    }
}
