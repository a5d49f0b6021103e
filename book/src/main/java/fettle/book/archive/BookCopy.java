package fettle.book.archive;

import fettle.book.store.SqliteFaults;
import fettle.book.store.SqliteFile;
import fettle.book.store.UnusableBookException;
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
     * Looks the whole copy through and makes it one file that needs no other beside it.
     *
     * @param file the copy, which may be changed
     * @param name what to call it in a refusal
     * @return how many changes its journal holds
     * @throws UnusableBookException if it is no book, of a newer version, or damaged
     */
    static long settle(Path file, Path name) {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Handle handle = Jdbi.create(connection).open()) {
            if (SqliteFile.schemaVersion(connection, name) == 0) {
                throw new UnusableBookException(name + " holds no book. Name a file that book backup wrote.");
            }
            handle.execute("PRAGMA journal_mode = DELETE");
            List<String> faults = Verification.of(handle);
            if (!faults.isEmpty()) {
                throw new UnusableBookException(
                        name + " is damaged (" + faults.get(0) + "). Use another backup; nothing was changed.");
            }
            return handle.createQuery("SELECT count(*) FROM journal")
                    .mapTo(Long.class)
                    .one();
        } catch (SQLException | JdbiException failed) {
            throw SqliteFaults.explain(failed, name);
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
