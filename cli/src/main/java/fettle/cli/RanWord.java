package fettle.cli;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code fettle ran}. */
@Command(
        name = "ran",
        description = "Takes a run: craft, minutes and what remained.",
        footer = {
            "",
            "For example:",
            "  fettle ran P07 Kestrel 7min left 30%",
            "  fettle ran P07 'Brook Heron' 7.5min left 15.2V 41C"
        })
final class RanWord implements Runnable {
    @Mixin
    private final Session session = new Session();

    @Option(names = "--preview", description = "Say what would be saved, and save nothing.")
    private boolean preview;

    @Parameters(index = "0", paramLabel = "TAG", description = "The pack's tag.")
    private String tag = "";

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "WORDS", description = "Craft, minutes, what remained.")
    private List<String> words = List.of();

    @Override
    public void run() {
        EntryWords.take(session, tag + " ran " + EntryWords.line(words), EntryWords.Saving.of(preview));
    }
}
