package fettle.desk.start;

import fettle.desk.frame.LineReading;
import fettle.engine.pack.Standing;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How far the first run has come.
 *
 * @param step 1 no pack yet, 2 a pack to check, 3 a pack checked
 * @param pack the pack it is about; {@code null} in the first step
 * @param readings what was typed and could not be saved; empty at first
 * @param celsius the same for temperature
 * @param rest the same for the rest
 * @param reading what stood against it; {@code null} if nothing was typed yet
 */
public record StartPage(
        int step,
        @Nullable Known pack,
        String readings,
        String celsius,
        String rest,
        @Nullable LineReading reading) {

    /** A pack: its tag, what it is, its readings, and once checked what they said. */
    public record Known(
            String tag,
            String label,
            int cells,
            String example,
            Standing standing,
            List<String> said,
            List<String> next) {}
}
