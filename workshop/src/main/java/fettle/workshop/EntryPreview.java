package fettle.workshop;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What Fettle made of a typed line, before anything is saved.
 *
 * @param line as typed
 * @param packTag the pack it is about; {@code null} if not understood
 * @param understood one phrase per thing understood, e.g. {@code cell 1 3.840 V}
 * @param problems what was not understood, and where; empty if it can be saved
 * @param questions what a person should look at although it can be saved
 * @param corrections the line with a tag of the book in place of one that is not; empty where none is near
 */
public record EntryPreview(
        String line,
        @Nullable String packTag,
        List<String> understood,
        List<LineProblem> problems,
        List<String> questions,
        List<Correction> corrections) {
    /** True if the line can be saved. */
    public boolean canSave() {
        return problems.isEmpty() && packTag != null;
    }

    /** The whole line as it was perhaps meant, and the tag put in. */
    public record Correction(String tag, String line) {}

    /**
     * A part of the line that was not understood.
     *
     * @param column position of its first character, from 1
     * @param part the part as typed
     * @param sentence what is wrong and how to mend it
     */
    public record LineProblem(int column, String part, String sentence) {}
}
