package fettle.cli;

import fettle.workshop.JournalEntry;
import fettle.workshop.Workshop;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code fettle journal}. */
@Command(
        name = "journal",
        description = "Lists every change of the book, newest first.",
        footer = {"", "For example:", "  fettle journal", "  fettle journal --limit 5 --skip 20"})
final class JournalWord implements Runnable {
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

    @Mixin
    private final Session session = new Session();

    @Option(
            names = "--limit",
            paramLabel = "COUNT",
            defaultValue = "20",
            description = "How many. Default: ${DEFAULT-VALUE}.")
    private int limit;

    @Option(
            names = "--skip",
            paramLabel = "COUNT",
            defaultValue = "0",
            description = "How many of the newest to leave out.")
    private int skip;

    @Override
    public void run() {
        if (limit < 1 || skip < 0) {
            throw new RefusedException("--limit must be at least 1 and --skip at least 0.");
        }
        try (Workshop workshop = session.open()) {
            List<JournalEntry> entries = workshop.history().recent(skip, limit);
            session.print(
                    entries,
                    entries.stream()
                            .map(entry -> line(entry, session.zone()))
                            .collect(Collectors.joining(System.lineSeparator())));
        }
    }

    private static String line(JournalEntry entry, ZoneId zone) {
        return String.format(
                "%6d  %s  %-10s %s%s",
                entry.id(),
                WHEN.withZone(zone).format(entry.at()),
                entry.actor(),
                entry.sentence(),
                entry.undone() ? "  (undone)" : "");
    }
}
