package fettle.cli;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code fettle charged}. */
@Command(
        name = "charged",
        description = "Takes a charge: put-back and end volts.",
        footer = {
            "",
            "For example:",
            "  fettle charged P07 3100mAh to 16.8V",
            "  fettle charged P07 1.84Ah to 4.2V/cell 31C yesterday 18:30"
        })
final class ChargedWord implements Runnable {
    @Mixin
    private final Session session = new Session();

    @Option(names = "--preview", description = "Say what would be saved, and save nothing.")
    private boolean preview;

    @Parameters(index = "0", paramLabel = "TAG", description = "The pack's tag.")
    private String tag = "";

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "WORDS", description = "Put-back, end volts, temperature.")
    private List<String> words = List.of();

    @Override
    public void run() {
        EntryWords.take(session, tag + " charged " + EntryWords.line(words), EntryWords.Saving.of(preview));
    }
}
