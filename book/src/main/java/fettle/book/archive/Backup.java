package fettle.book.archive;

import fettle.book.store.Book;
import fettle.book.store.LogFolder;
import fettle.book.store.LogPieces;
import fettle.book.store.SqliteFaults;
import fettle.book.store.UnusableBookException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteConnection;

/** Copies a book to one file while it is in use. */
public final class Backup {
    private static final int SQLITE_OK = 0;

    private Backup() {}

    /**
     * Copies, looks the copy through, and only then gives it its name.
     *
     * @return what was done, a line each
     * @throws UnusableBookException if the file is there already or cannot be written, or the copy is not whole
     */
    public static List<String> write(Book book, Path file) {
        Path target = file.toAbsolutePath().normalize();
        Path part = Targets.begin(target);
        try {
            book.outsideTransaction(connection -> copy(connection, part));
            List<String> lost = packLogs(part, book.folder().logs());
            long changes = BookCopy.verify(part, target);
            Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
            List<String> done = new ArrayList<>(
                    List.of("copied the book to " + target + ", " + changes + " changes", "verified the copy: whole"));
            lost.forEach(log ->
                    done.add("the log " + log + " is missing or damaged in the book, so the copy has not got it"));
            return done;
        } catch (IOException failed) {
            throw new UnusableBookException(
                    "the backup " + target + " cannot be written. Look after the disk.", failed);
        } finally {
            Targets.drop(part);
        }
    }

    /** The logs go into the copy, so that it is one file; each is read back from it. */
    private static List<String> packLogs(Path part, LogFolder logs) throws IOException {
        try (Handle copy = Jdbi.create("jdbc:sqlite:" + part).open()) {
            List<String> lost = copy.inTransaction(inside -> LogPieces.pack(inside, logs));
            List<String> damaged = LogPieces.damaged(copy);
            if (!damaged.isEmpty()) {
                throw new UnusableBookException("the backup does not hold the log " + damaged.get(0)
                        + " as it is in the book. Look after the disk.");
            }
            return lost;
        } catch (JdbiException failed) {
            throw SqliteFaults.explain(failed, part);
        }
    }

    private static boolean copy(Connection connection, Path part) {
        try {
            int result = connection.unwrap(SQLiteConnection.class).getDatabase().backup("main", part.toString(), null);
            if (result != SQLITE_OK) {
                throw new UnusableBookException(
                        "the backup cannot be written (SQLite reports " + result + "). Look whether the disk is full.");
            }
            return true;
        } catch (SQLException failed) {
            throw SqliteFaults.explain(failed, part);
        }
    }
}
