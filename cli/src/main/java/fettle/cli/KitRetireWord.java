package fettle.cli;

import fettle.workshop.JournalEntry;
import fettle.workshop.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code fettle pack retire} and its like. */
@Command
final class KitRetireWord<T> implements Runnable {
    private final KitKind<T> kind;

    @Mixin
    private final Session session = new Session();

    @Parameters(paramLabel = "NAME", description = "Its tag or name.")
    private String name = "";

    @Option(names = "--reason", paramLabel = "TEXT", description = "Why, for the journal.")
    private String reason = "";

    KitRetireWord(KitKind<T> kind) {
        this.kind = kind;
    }

    @Override
    public void run() {
        try (Workshop workshop = session.open()) {
            JournalEntry entry = kind.shelf().apply(workshop).retire(name, reason);
            session.print(entry, entry.sentence());
        }
    }
}
