package fettle.cli;

import fettle.workshop.CheckRow;
import fettle.workshop.EntryPreview;
import fettle.workshop.JournalEntry;
import fettle.workshop.Workshop;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code fettle checks}. */
@Command(
        name = "checks",
        description = "Takes the checks of a whole shelf from a file: all rows are saved, or none.",
        footer = {
            "",
            "One pack a row: its tag, then its readings as for check, parted by spaces or tabs. A first row that names a",
            "tag column (tag, cell 1, cell 2, temperature, rest, note) says what each column holds.",
            "",
            "For example:",
            "  fettle checks shelf.tsv --every \"21C rest 2h\"",
            "  fettle checks shelf.tsv --preview"
        })
final class ChecksWord implements Runnable {
    private static final long LARGEST_BYTES = 1_000_000;

    @Mixin
    private final Session session = new Session();

    @Parameters(paramLabel = "FILE", description = "Rows as text, e.g. copied from a spreadsheet.")
    private Path file = Path.of("");

    @Option(names = "--every", paramLabel = "WORDS", description = "What holds for every row, e.g. \"21C rest 2h\".")
    private String every = "";

    @Option(names = "--preview", description = "Say what would be saved, and save nothing.")
    private boolean preview;

    @Override
    public void run() {
        String rows = rows();
        try (Workshop workshop = session.open()) {
            if (preview) {
                List<CheckRow> read = workshop.shelfCheck().preview(rows, every);
                session.print(read, lines(read));
                return;
            }
            if (!session.json()) {
                workshop.shelfCheck()
                        .preview(rows, every)
                        .forEach(row -> row.preview()
                                .questions()
                                .forEach(question -> session.progress("row " + row.number() + ": look: " + question)));
            }
            List<JournalEntry> saved = workshop.shelfCheck().save(rows, every);
            session.print(
                    saved,
                    saved.stream()
                            .map(entry -> entry.sentence() + " (undo with: fettle undo " + entry.id() + ")")
                            .collect(Collectors.joining(System.lineSeparator())));
        }
    }

    private static String lines(List<CheckRow> rows) {
        return rows.stream()
                .map(row -> "row " + row.number() + "  " + told(row.preview()))
                .collect(Collectors.joining(System.lineSeparator()));
    }

    private static String told(EntryPreview preview) {
        return preview.canSave()
                ? preview.packTag() + ": " + String.join(" · ", preview.understood())
                : preview.problems().stream()
                        .map(EntryPreview.LineProblem::sentence)
                        .collect(Collectors.joining(" "));
    }

    private String rows() {
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                throw new RefusedException(file + " is too large for a shelf of checks. Save it in parts.");
            }
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new RefusedException(file + " cannot be read as UTF-8 text. Name a text file, one pack a row.");
        }
    }
}
