package fettle.cli;

import fettle.workshop.Registered;
import fettle.workshop.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code fettle craft show} and its like. */
@Command
final class KitShowWord<T> implements Runnable {
    private final KitKind<T> kind;

    @Mixin
    private final Session session = new Session();

    @Parameters(paramLabel = "NAME", description = "Its name.")
    private String name = "";

    KitShowWord(KitKind<T> kind) {
        this.kind = kind;
    }

    @Override
    public void run() {
        try (Workshop workshop = session.open()) {
            Registered<T> item = kind.shelf().apply(workshop).find(name);
            String state = item.retired() ? System.lineSeparator() + "retired" : "";
            session.print(item, TypedText.of(kind.typed().apply(item.item())) + state);
        }
    }
}
