package fettle.cli;

import fettle.workshop.EntryPreview;
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
            if (saving == Saving.PREVIEW && session.json()) {
                session.print(preview, "");
            }
            if (preview.canSave()) {
                preview.questions().forEach(question -> session.progress("look: " + question));
            } else if (!session.json()) {
                session.progress(preview.line() + System.lineSeparator() + MarkedLine.marks(preview));
            }
            if (saving == Saving.SAVE || !preview.canSave()) {
                // refuses what cannot be saved, with every problem at its column
                JournalEntry entry = workshop.entries().enter(line);
                session.print(entry, entry.sentence() + " (undo with: fettle undo " + entry.id() + ")");
            } else if (!session.json()) {
                session.line(preview.packTag() + ": " + String.join(" · ", preview.understood()));
            }
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

    /** One line of the words behind a command; a note that the shell kept whole is quoted again, so that it ends there. */
    static String line(List<String> words) {
        StringBuilder line = new StringBuilder();
        boolean afterNote = false;
        for (String word : words) {
            boolean whole = afterNote && word.contains(" ") && !word.contains("\"");
            line.append(line.isEmpty() ? "" : " ").append(whole ? "\"" + word + "\"" : word);
            afterNote = word.equalsIgnoreCase("note");
        }
        return line.toString();
    }
}
