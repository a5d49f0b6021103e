package fettle.cli;

import fettle.workshop.JournalEntry;
import fettle.workshop.Shelf;
import fettle.workshop.Workshop;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code fettle pack edit} and its like: what is not given stays as it was. */
@Command
final class KitEditWord<T> implements Runnable {
    private final KitKind<T> kind;
    private final KitFields<T> fields;

    @Mixin
    private final Session session = new Session();

    @Parameters(paramLabel = "NAME", description = "Its tag or name.")
    private String name = "";

    @Option(names = "--rename", paramLabel = "NEW", description = "Its new tag or name; the history follows.")
    private @Nullable String newName;

    KitEditWord(KitKind<T> kind, KitFields<T> fields) {
        this.kind = kind;
        this.fields = fields;
    }

    @Override
    public void run() {
        try (Workshop workshop = session.open()) {
            Shelf<T> shelf = kind.shelf().apply(workshop);
            var present = shelf.find(name);
            T item = fields.changed(present.item(), newName == null ? present.name() : newName);
            JournalEntry entry = shelf.edit(name, item);
            session.print(entry, entry.sentence());
        }
    }
}
