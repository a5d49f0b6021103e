package fettle.cli;

import fettle.workshop.Workshop;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BiFunction;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The words under {@code fettle book}. */
final class BookWord {
    private BookWord() {}

    /** {@code fettle book backup}. */
    @Command(
            name = "backup",
            description = "Copies the book to one file and verifies the copy. A folder gets a file named for now.",
            footer = {"", "For example:", "  fettle book backup ~/backups"})
    static final class Backup implements Runnable {
        @Mixin
        private final Session session = new Session();

        @Parameters(paramLabel = "FILE", description = "The file to make.")
        private Path file = Path.of("");

        @Override
        public void run() {
            keep(session, file, (workshop, target) -> workshop.keeping().backup(target));
        }
    }

    /** {@code fettle book export}. */
    @Command(
            name = "export",
            description = "Writes the whole book as one archive of CSV and JSON. A folder gets a file named for now.",
            footer = {"", "For example:", "  fettle book export book.zip"})
    static final class Export implements Runnable {
        @Mixin
        private final Session session = new Session();

        @Parameters(paramLabel = "FILE", description = "The archive to make.")
        private Path file = Path.of("");

        @Override
        public void run() {
            keep(session, file, (workshop, target) -> workshop.keeping().exportTo(target));
        }
    }

    /** {@code fettle book import}. */
    @Command(
            name = "import",
            description = "Reads an archive made by export into an empty book.",
            footer = {"", "For example:", "  fettle book import book.zip --book ~/new-book"})
    static final class Import implements Runnable {
        @Mixin
        private final Session session = new Session();

        @Parameters(paramLabel = "FILE", description = "The archive.")
        private Path file = Path.of("");

        @Override
        public void run() {
            keep(session, file, (workshop, archive) -> workshop.keeping().importFrom(archive));
        }
    }

    /** {@code fettle book restore}. */
    @Command(
            name = "restore",
            description = "Puts a backup in place of the book; what was there is kept beside it.",
            footer = {"", "For example:", "  fettle book restore book.sqlite"})
    static final class Restore implements Runnable {
        @Mixin
        private final Session session = new Session();

        @Parameters(paramLabel = "FILE", description = "The backup.")
        private Path file = Path.of("");

        @Override
        public void run() {
            tell(
                    session,
                    Workshop.restore(
                            file, session.bookFolder(), session.surroundings().clock()));
        }
    }

    /** {@code fettle book verify}. */
    @Command(
            name = "verify",
            description = "Checks every record of the book and every reference between them.",
            footer = {"", "For example:", "  fettle book verify"})
    static final class Verify implements Runnable {
        @Mixin
        private final Session session = new Session();

        @Override
        public void run() {
            try (Workshop workshop = session.open()) {
                List<String> faults = workshop.keeping().verify();
                session.print(
                        faults, faults.isEmpty() ? "the book is whole." : String.join(System.lineSeparator(), faults));
                if (!faults.isEmpty()) {
                    throw new RefusedException(
                            "faults found: " + faults.size() + ". Restore a backup: fettle book restore FILE.");
                }
            }
        }
    }

    private static void keep(Session session, Path file, BiFunction<Workshop, Path, List<String>> job) {
        try (Workshop workshop = session.open()) {
            tell(session, job.apply(workshop, file));
        }
    }

    private static void tell(Session session, List<String> done) {
        session.print(done, String.join(System.lineSeparator(), done));
    }
}
