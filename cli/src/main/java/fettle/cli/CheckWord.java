package fettle.cli;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code fettle check}. */
@Command(
        name = "check",
        description = "Takes a check: rest volts per cell or of the whole pack, and what was seen.",
        footer = {
            "",
            "For example:",
            "  fettle check P07 3.84 3.83 3.85 3.84 21C rest 2h",
            "  fettle check P07 3,84 3,83 3,85 3,84 ir 2.1 2.2 2.0 2.4",
            "  fettle check P07 15.4V pack 70F yesterday 18:30",
            "  fettle check P07 swollen note soft corner"
        })
final class CheckWord implements Runnable {
    @Mixin
    private final Session session = new Session();

    @Option(names = "--preview", description = "Say what would be saved, and save nothing.")
    private boolean preview;

    @Parameters(arity = "1..*", paramLabel = "WORDS", description = "The pack's tag, then the readings in any order.")
    private List<String> words = List.of();

    @Override
    public void run() {
        EntryWords.take(session, EntryWords.line(words), EntryWords.Saving.of(preview));
    }
}
