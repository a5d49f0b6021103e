package fettle.workshop.entry;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was made of one line.
 *
 * @param packTag tag of the registered pack it is about; {@code null} if it names none
 * @param entry what to save; {@code null} if there is any problem
 * @param understood one phrase per thing understood
 * @param problems everything that stands in the way, by column
 * @param questions what a person should look at although it can be saved
 */
public record LineReading(
        @Nullable String packTag,
        @Nullable Entry entry,
        List<String> understood,
        List<Problem> problems,
        List<String> questions) {}
