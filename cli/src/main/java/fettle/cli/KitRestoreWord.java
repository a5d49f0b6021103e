package fettle.cli;

import fettle.workshop.JournalEntry;
import fettle.workshop.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code fettle pack restore} and its like. */
@Command
final class KitRestoreWord<T> implements Runnable {
    private final KitKind<T> kind;

    @Mixin
    private final Session session = new Session();

    @Parameters(paramLabel = "NAME", description = "Its tag or name.")
    private String name = "";

    KitRestoreWord(KitKind<T> kind) {
        this.kind = kind;
    }

    @Override
    public void run() {
        try (Workshop workshop = session.open()) {
            JournalEntry entry = kind.shelf().apply(workshop).restore(name);
            session.print(entry, entry.sentence());
        }
    }
}
