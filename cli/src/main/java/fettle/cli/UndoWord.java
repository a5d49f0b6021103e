package fettle.cli;

import fettle.workshop.JournalEntry;
import fettle.workshop.Workshop;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code fettle undo}. */
@Command(
        name = "undo",
        description = "Undoes a change; the undoing is in the journal and can itself be undone.",
        footer = {"", "For example:", "  fettle undo", "  fettle undo 12"})
final class UndoWord implements Runnable {
    @Mixin
    private final Session session = new Session();

    @Parameters(arity = "0..1", paramLabel = "NUMBER", description = "The change's number; default the latest.")
    private @Nullable Long number;

    @Override
    public void run() {
        try (Workshop workshop = session.open()) {
            JournalEntry entry = number == null
                    ? workshop.history().undoLatest()
                    : workshop.history().undo(number);
            session.print(entry, entry.sentence());
        }
    }
}
