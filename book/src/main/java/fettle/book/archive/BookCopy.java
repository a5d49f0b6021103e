package fettle.book.archive;

import fettle.book.store.LogFolder;
import fettle.book.store.LogPieces;
import fettle.book.store.SqliteFaults;
import fettle.book.store.SqliteFile;
import fettle.book.store.TraceFiles;
import fettle.book.store.UnusableBookException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/** A book's file that is not in use: looked through before it is trusted. */
final class BookCopy {
    private BookCopy() {}

    /**
     * What a copy was found to be.
     *
     * @param changes how many changes its journal holds
     * @param lostLogs logs its rows name that are missing or damaged, in sentences
     */
    record Settled(long changes, List<String> lostLogs) {}

    /**
     * Looks the whole copy through and makes it one file that needs no other beside it.
     *
     * @param file the copy, which may be changed
     * @param name what to call it in a refusal
     * @return how many changes its journal holds
     * @throws UnusableBookException if it is no book, of a newer version, or damaged
     */
    static long verify(Path file, Path name) {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Handle handle = Jdbi.create(connection).open()) {
            requireBook(connection, name);
            handle.execute("PRAGMA journal_mode = DELETE");
            requireWhole(handle, name);
            return handle.createQuery("SELECT count(*) FROM journal")
                    .mapTo(Long.class)
                    .one();
        } catch (SQLException | JdbiException failed) {
            throw SqliteFaults.explain(failed, name);
        }
    }

    /**
     * The same of a backup of this or an earlier version that is to become a book: it is brought up to this version, and the
     * logs it carries into a folder.
     *
     * @throws IOException if a log cannot be written there
     */
    static Settled settle(Path file, Path name, LogFolder logs) throws IOException {
        try {
            if (version(file, name) == SqliteFile.SCHEMA_VERSION) {
                verify(file, name);
            }
            unpack(file, logs);
            SqliteFile.migrate(file, logs);
            long changes = verify(file, name);
            try (Handle handle = Jdbi.create("jdbc:sqlite:" + file).open()) {
                return new Settled(changes, TraceFiles.faults(handle, logs));
            }
        } catch (UncheckedIOException failed) {
            throw failed.getCause();
        } catch (SQLException | JdbiException failed) {
            throw SqliteFaults.explain(failed, name);
        }
    }

    private static void unpack(Path file, LogFolder logs) {
        try (Handle handle = Jdbi.create("jdbc:sqlite:" + file).open()) {
            LogPieces.unpack(handle, logs);
        }
    }

    private static int version(Path file, Path name) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            return requireBook(connection, name);
        }
    }

    private static int requireBook(Connection connection, Path name) throws SQLException {
        int version = SqliteFile.schemaVersion(connection, name);
        if (version == 0) {
            throw new UnusableBookException(name + " holds no book. Name a file that book backup wrote.");
        }
        return version;
    }

    private static void requireWhole(Handle handle, Path name) {
        List<String> faults = Verification.of(handle);
        if (!faults.isEmpty()) {
            throw new UnusableBookException(
                    name + " is damaged (" + faults.get(0) + "). Use another backup; nothing was changed.");
        }
    }

    /** Refuses anything but a plain file that is there. */
    static void requireFile(Path file) {
        if (!Files.isRegularFile(file)) {
            throw new UnusableBookException(
                    file + " is not a file. Name a file that book backup or book export wrote.");
        }
    }
}
