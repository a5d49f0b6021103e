package fettle.cli;

import fettle.workshop.JournalEntry;
import fettle.workshop.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code fettle pack add} and its like. */
@Command
final class KitAddWord<T> implements Runnable {
    private final KitKind<T> kind;
    private final KitFields<T> fields;

    @Mixin
    private final Session session = new Session();

    @Parameters(paramLabel = "NAME", description = "Its tag or name.")
    private String name = "";

    KitAddWord(KitKind<T> kind, KitFields<T> fields) {
        this.kind = kind;
        this.fields = fields;
    }

    @Override
    public void run() {
        T item = fields.made(name, session.zone());
        try (Workshop workshop = session.open()) {
            JournalEntry entry = kind.shelf().apply(workshop).add(item);
            session.print(entry, entry.sentence());
        }
    }
}
