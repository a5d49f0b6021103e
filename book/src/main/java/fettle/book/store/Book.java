package fettle.book.store;

import fettle.book.record.Shape;
import fettle.book.record.UnreadableRowException;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import javax.sql.DataSource;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/**
 * An open book: one folder, held by one process, one SQLite file.
 *
 * <p>Thread-safe: transactions run one after the other. A transaction that has returned is on the disk and survives a
 * kill at any later moment.
 */
public final class Book implements AutoCloseable {
    private final BookFolder folder;
    private final BookLock lock;
    private final Connection connection;
    private final Handle handle;
    private final Set<String> damaged = new ConcurrentSkipListSet<>();
    private final ReentrantLock turn = new ReentrantLock(true);

    private Book(BookFolder folder, BookLock lock, Connection connection) {
        this.folder = folder;
        this.lock = lock;
        this.connection = connection;
        this.handle = Jdbi.create(connection).open();
    }

    /**
     * Opens the book in a folder, making folder and book where there are none.
     *
     * @throws UnusableBookException if it is in use, read-only, damaged, no book, or of a newer version
     */
    public static Book open(Path path) {
        BookFolder folder = BookFolder.ready(path);
        BookLock lock = BookLock.take(folder);
        try {
            folder.settleRestore();
            folder.refuseAnEmptyFile();
            DataSource source = SqliteFile.writable(folder.file());
            SqliteFile.migrate(source, folder.file(), folder.logs());
            Book book = new Book(folder, lock, source.getConnection());
            book.sweepLogs();
            return book;
        } catch (SQLException | RuntimeException refused) {
            lock.close();
            throw SqliteFaults.explain(refused, folder.file());
        }
    }

    /** A log without a row is what a cut-off addition left behind. */
    private void sweepLogs() {
        try {
            folder.logs()
                    .sweep(Set.copyOf(handle.createQuery("SELECT sha256 FROM trace_file")
                            .mapTo(String.class)
                            .list()));
        } catch (IOException failed) {
            throw new UnusableBookException(
                    "the folder " + folder.logs().path() + " cannot be tidied. Give yourself the right to write it.",
                    failed);
        }
    }

    public BookFolder folder() {
        return folder;
    }

    public <T> Items<T> items(Shape<T> shape) {
        return new Items<>(this, shape);
    }

    /** The logs its traces were read from. */
    public TraceFiles traceFiles() {
        return new TraceFiles(this);
    }

    public Journal journal() {
        return new Journal(this);
    }

    /**
     * Does some work as one: all of it is saved, or, if it throws, none. Work inside work joins the outer one.
     *
     * @throws UnusableBookException if the file cannot be read or written
     */
    public <R> R inTransaction(Function<Handle, R> work) {
        turn.lock();
        try {
            return handle.isInTransaction() ? work.apply(handle) : handle.inTransaction(work::apply);
        } catch (JdbiException failed) {
            throw SqliteFaults.explain(failed, folder.file());
        } catch (UnreadableRowException damaged) {
            throw new UnusableBookException(
                    "the book " + folder.file() + " has a damaged row: " + damaged.getMessage()
                            + ". Run: book verify, and restore the latest backup.",
                    damaged);
        } finally {
            turn.unlock();
        }
    }

    /** Rows that were met since the book was opened and could not be read, in sentences. Nothing else is lost with them. */
    public List<String> damaged() {
        return List.copyOf(damaged);
    }

    void leaveOut(String row) {
        damaged.add(row);
    }

    /** Work on the bare connection, outside any transaction: for what SQLite does not do inside one. */
    public <R> R outsideTransaction(Function<Connection, R> work) {
        turn.lock();
        try {
            return work.apply(connection);
        } finally {
            turn.unlock();
        }
    }

    @Override
    public void close() {
        turn.lock();
        try {
            closeConnection();
        } finally {
            turn.unlock();
        }
    }

    private void closeConnection() {
        try (lock) {
            handle.close();
            connection.close();
        } catch (SQLException | JdbiException failed) {
            throw SqliteFaults.explain(failed, folder.file());
        }
    }
}
