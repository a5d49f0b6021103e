package fettle.cli;

import fettle.workshop.ShelfReview;
import fettle.workshop.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code fettle today}. */
@Command(
        name = "today",
        description = "The morning review: every pack's standing, charge, reason and task.",
        footer = {"", "For example:", "  fettle today", "  fettle today --json"})
final class TodayWord implements Runnable {
    @Mixin
    private final Session session = new Session();

    @Override
    public void run() {
        try (Workshop workshop = session.open()) {
            ShelfReview review = workshop.review().shelf();
            session.print(review, ReviewTable.of(review, session.zone()));
        }
    }
}
