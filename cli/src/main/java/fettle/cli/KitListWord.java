package fettle.cli;

import fettle.workshop.Registered;
import fettle.workshop.Workshop;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code fettle pack list} and its like. */
@Command
final class KitListWord<T> implements Runnable {
    private final KitKind<T> kind;

    @Mixin
    private final Session session = new Session();

    @Option(names = "--all", description = "Retired ones too.")
    private boolean all;

    KitListWord(KitKind<T> kind) {
        this.kind = kind;
    }

    @Override
    public void run() {
        try (Workshop workshop = session.open()) {
            List<Registered<T>> shown = kind.shelf().apply(workshop).list().stream()
                    .filter(item -> all || !item.retired())
                    .toList();
            session.print(shown, shown.stream().map(this::line).collect(Collectors.joining(System.lineSeparator())));
            if (shown.isEmpty()) {
                session.progress("none in use. Add one: " + KitKind.Verb.ADD.example(kind));
            }
        }
    }

    private String line(Registered<T> item) {
        return String.format(
                "%-16s %s%s", item.name(), kind.label().apply(item.item()), item.retired() ? "  (retired)" : "");
    }
}
