package fettle.workshop;

import fettle.book.archive.Backup;
import fettle.book.archive.Export;
import fettle.book.archive.Import;
import fettle.book.archive.Verification;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Keeps the book: backup, verify, export, import. Each refuses with a {@link BookException}. Thread-safe. */
public final class Keeping {
    private final Ledger ledger;

    Keeping(Ledger ledger) {
        this.ledger = ledger;
    }

    /**
     * Copies the book to one file while it is in use, then verifies the copy. A folder gets a file named for the
     * instant. Returns what was done, a line each.
     */
    public List<String> backup(Path file) {
        return ledger.use(() -> Backup.write(ledger.book(), named(file, "sqlite")));
    }

    /** Checks every row and reference; returns the faults found, none if it is whole. */
    public List<String> verify() {
        return ledger.use(() -> Verification.of(ledger.book()));
    }

    /**
     * What was left out of the answers so far because its row is damaged, with the mend; empty as long as all is well.
     */
    public Optional<String> damage() {
        List<String> damaged = ledger.book().damaged();
        return damaged.isEmpty()
                ? Optional.empty()
                : Optional.of("left out as damaged: " + String.join("; ", damaged)
                        + ". Everything else is there. Run book verify, and restore the latest backup.");
    }

    /** Writes one archive of CSV and JSON; into a folder, named for the instant. Returns what was done. */
    public List<String> exportTo(Path file) {
        return ledger.use(() -> Export.write(ledger.book(), named(file, "zip")));
    }

    /** Reads an archive back into an empty book, all or nothing. Returns what was done. */
    public List<String> importFrom(Path file) {
        return ledger.use(() -> Import.read(ledger.book(), file));
    }

    private Path named(Path target, String extension) {
        String instant = ledger.now().toString().replaceAll("\\.\\d+|[-:]", "");
        return Files.isDirectory(target) ? target.resolve("fettle-" + instant + "." + extension) : target;
    }
}
