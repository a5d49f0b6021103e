package fettle.workshop;

import fettle.engine.trace.TraceEvent;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One thing a trace showed past a limit, as the pack's record tells it.
 *
 * @param trace number of the trace
 * @param at when; {@code null} where the logger knew no date
 * @param event what, with its value and limit
 * @param acknowledged what was found when it was looked into; empty while nobody has
 */
public record PastLimit(long trace, @Nullable Instant at, TraceEvent event, String acknowledged) {}
