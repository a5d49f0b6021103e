package fettle.engine.charge;

import fettle.engine.working.Working;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Something to do with a pack.
 *
 * @param kind what sort of work
 * @param packTag the pack
 * @param instruction what to do, with numbers
 * @param reason why, naming the limit that binds
 * @param due when at the latest; {@code null} means when the pack is next wanted
 * @param caution the caution that belongs to this action; may be empty
 * @param working how the numbers were reached
 */
public record Task(
        TaskKind kind,
        String packTag,
        String instruction,
        String reason,
        @Nullable Instant due,
        String caution,
        Working working) {}
