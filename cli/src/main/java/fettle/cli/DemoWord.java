package fettle.cli;

import fettle.workshop.ShelfReview;
import fettle.workshop.Workshop;
import fettle.workshop.demo.DemoBook;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code fettle demo}. */
@Command(
        name = "demo",
        description = {
            "Shows Fettle at work: makes a book of an invented club, prints its morning review and serves the desk.",
            "The book is thrown away at the end unless --book says where to keep it."
        },
        footer = {"", "For example:", "  fettle demo", "  fettle demo --no-serve"})
final class DemoWord implements Runnable {
    @Mixin
    private final Session session = new Session();

    @Mixin
    private final Serving serving = new Serving();

    @Option(names = "--no-serve", description = "Print the morning review and end.")
    private boolean noServe;

    @Override
    public void run() {
        Path kept = session.namedFolder();
        if (kept != null) {
            show(kept, "an invented club: a demo kept in " + kept);
            return;
        }
        try (ThrowAwayFolder folder = ThrowAwayFolder.make()) {
            show(folder.path(), "an invented club: this book is thrown away when the demo ends");
        }
    }

    private void show(Path folder, String notice) {
        session.progress("making the book of an invented club in " + folder + " …");
        DemoBook.make(folder, session.surroundings().clock().instant(), session::progress);
        try (Workshop workshop = session.open(folder)) {
            ShelfReview review = workshop.review().shelf();
            session.print(review, ReviewTable.of(review, session.zone()));
            if (!noServe) {
                serving.serve(session, workshop, notice);
            }
        }
    }
}
