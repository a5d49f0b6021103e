package fettle.book.archive;

import fettle.book.store.Book;
import fettle.book.store.SqliteFaults;
import fettle.book.store.UnusableBookException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
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
            long changes = BookCopy.settle(part, target);
            Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
            return List.of("copied the book to " + target + ", " + changes + " changes", "verified the copy: whole");
        } catch (IOException failed) {
            throw new UnusableBookException(
                    "the backup " + target + " cannot be written. Look after the disk.", failed);
        } finally {
            Targets.drop(part);
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
