package fettle.engine.outing;

import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Runs of one craft that somebody wants.
 *
 * @param craft the craft's name
 * @param count how many
 * @param value what one of them is worth; more is more
 * @param earliest when one may start at the earliest
 * @param latest when one may start at the latest
 * @param durationSeconds how long one takes [s]
 * @param gapSeconds how long the craft then rests before its next run [s]
 * @param takesFraction share of the pack's capacity one takes; {@code null} to work it out from the craft's typical current
 */
public record RunWish(
        String craft,
        int count,
        int value,
        Instant earliest,
        Instant latest,
        double durationSeconds,
        double gapSeconds,
        @Nullable Double takesFraction) {
    /** Names of its runs, e.g. {@code Harrier 3}; numbers go on after those of earlier wishes of the same craft. */
    public List<String> names(int before) {
        return IntStream.rangeClosed(before + 1, before + count)
                .mapToObj(number -> craft + " " + number)
                .toList();
    }
}
