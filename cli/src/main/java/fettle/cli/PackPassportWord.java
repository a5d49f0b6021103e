package fettle.cli;

import fettle.desk.passport.PackPassport;
import fettle.workshop.Workshop;
import fettle.workshop.label.Paper;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code fettle pack passport}. */
@Command(
        name = "passport",
        description = "Writes a pack's record, health and standing as PDF, for a sale or a club.",
        footer = {"", "For example:", "  fettle pack passport P07 --out P07.pdf"})
final class PackPassportWord implements Runnable {
    @Mixin
    private final Session session = new Session();

    @Parameters(paramLabel = "TAG", description = "The pack's tag.")
    private String tag = "";

    @Option(names = "--letter", description = "On letter paper instead of A4.")
    private boolean letter;

    @Option(names = "--out", paramLabel = "FILE", required = true, description = "A new PDF file.")
    private Path out = Path.of("");

    @Override
    public void run() {
        try (Workshop workshop = session.open()) {
            Paper paper = letter ? Paper.LETTER : Paper.A4;
            NewFile.write(
                    out,
                    PackPassport.pdf(
                            workshop, tag, paper, session.surroundings().clock()));
            session.print(List.of(out.toString()), "wrote the passport of " + tag + " to " + out);
        }
    }
}
