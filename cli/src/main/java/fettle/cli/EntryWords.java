package fettle.cli;

import fettle.workshop.EntryPreview;
import fettle.workshop.EntryPreview.LineProblem;
import fettle.workshop.JournalEntry;
import fettle.workshop.Workshop;
import java.util.List;

/** Saves an entry line, or says what in it was not understood; shared by {@code check}, {@code charged} and {@code ran}. */
final class EntryWords {
    private EntryWords() {}

    /** Saves the line, or tells what it would save. */
    static void take(Session session, String line, Saving saving) {
        try (Workshop workshop = session.open()) {
            EntryPreview preview = workshop.entries().preview(line);
            if (!preview.canSave()) {
                throw new RefusedException(problems(preview));
            }
            preview.questions().forEach(question -> session.progress("look: " + question));
            if (saving == Saving.PREVIEW) {
                session.print(preview, preview.packTag() + ": " + String.join(" · ", preview.understood()));
                return;
            }
            JournalEntry entry = workshop.entries().enter(line);
            session.print(entry, entry.sentence() + " (undo with: fettle undo " + entry.id() + ")");
        }
    }

    /** Whether to save. */
    enum Saving {
        SAVE,
        PREVIEW;

        static Saving of(boolean onlyPreview) {
            return onlyPreview ? PREVIEW : SAVE;
        }
    }

    private static String problems(EntryPreview preview) {
        List<String> sentences =
                preview.problems().stream().map(EntryWords::sentence).toList();
        return sentences.isEmpty()
                ? "the line names no pack. Begin with the pack's tag, e.g. P07 3.84 3.83 3.85 3.84."
                : String.join(System.lineSeparator() + "fettle: ", sentences);
    }

    private static String sentence(LineProblem problem) {
        return "column " + problem.column() + ", \"" + problem.part() + "\": " + problem.sentence();
    }
}
