package fettle.cli;

import fettle.workshop.PackFile;
import fettle.workshop.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code fettle pack show}. */
@Command
final class PackShowWord implements Runnable {
    @Mixin
    private final Session session = new Session();

    @Parameters(paramLabel = "TAG", description = "The pack's tag.")
    private String tag = "";

    @Option(names = "--working", description = "Show the working of every number.")
    private boolean working;

    @Override
    public void run() {
        try (Workshop workshop = session.open()) {
            PackFile file = workshop.review().pack(tag);
            session.print(
                    file,
                    PackText.of(
                            file,
                            PackText.Detail.of(working),
                            session.surroundings().clock().instant(),
                            session.zone()));
        }
    }
}
