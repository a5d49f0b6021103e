package fettle.cli;

import fettle.workshop.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code fettle open}. */
@Command(
        name = "open",
        description = "Serves your book as a web desk on this machine until Ctrl-C.",
        footer = {"", "For example:", "  fettle open", "  fettle open --port 0 --book ~/club-book"})
final class OpenWord implements Runnable {
    @Mixin
    private final Session session = new Session();

    @Mixin
    private final Serving serving = new Serving();

    @Override
    public void run() {
        session.progress("opening the book in " + session.bookFolder() + " …");
        try (Workshop workshop = session.open()) {
            serving.serve(session, workshop, null);
        }
    }
}
