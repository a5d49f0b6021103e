package fettle.book.store;

import fettle.book.intake.LogFile;
import fettle.engine.units.InputException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.jdbi.v3.core.Handle;

/**
 * Logs as received, kept by the SHA-256 of their bytes in the folder beside the book: the same file twice is kept once.
 * Memory does not grow with them. Thread-safe.
 */
public final class TraceFiles {
    private final Book book;
    private final LogFolder logs;

    TraceFiles(Book book) {
        this.book = book;
        this.logs = book.folder().logs();
    }

    /** What a file's bytes are known by. */
    public static String sha256(LogFile file) {
        try (InputStream in = file.open()) {
            return LogFolder.sha256(in);
        } catch (IOException unreadable) {
            throw new InputException("file", file.name() + " cannot be read: " + unreadable.getMessage() + ".");
        }
    }

    /** Puts a file as received on the disk. It is the book's only once {@link #name} was called; until then it may be swept. */
    public void keep(LogFile file, String sha256) {
        logs.keep(file, sha256);
    }

    /** Names a file that {@link #keep} has put on the disk. */
    public void name(LogFile file, String sha256) {
        book.inTransaction(handle -> handle.execute(
                "INSERT INTO trace_file (sha256, bytes) VALUES (?, ?) ON CONFLICT DO NOTHING", sha256, file.bytes()));
    }

    /** Whether a kept file is there, byte for byte as received. */
    public boolean isWhole(String sha256) {
        return logs.isWhole(sha256);
    }

    /**
     * A kept file, byte for byte as it was received.
     *
     * @throws InputException if it is missing or damaged; what was found in it is in the record all the same
     */
    public LogFile kept(String sha256, String name, long bytes) {
        if (!logs.isWhole(sha256)) {
            throw new InputException(
                    "file",
                    "the log " + name + " is "
                            + (Files.exists(logs.file(sha256)) ? "damaged" : "missing") + " in the book's folder ("
                            + logs.file(sha256)
                            + "). What was found in it is kept; to see its samples, add the same file"
                            + " again or restore a backup.");
        }
        return new Kept(logs, sha256, name, bytes);
    }

    /** Kept files that are missing or no longer what they were received as. */
    public static List<String> faults(Handle handle, LogFolder logs) {
        List<String> faults = new ArrayList<>();
        handle.createQuery("SELECT f.sha256 AS sha256, t.file_name AS name FROM trace_file f"
                        + " JOIN pack_trace t ON t.file_sha256 = f.sha256 GROUP BY f.sha256 ORDER BY min(t.id)")
                .map((result, context) -> List.of(result.getString("sha256"), result.getString("name")))
                .forEach(log -> {
                    if (!logs.isWhole(log.get(0))) {
                        faults.add("the log " + log.get(1) + " is "
                                + (Files.exists(logs.file(log.get(0))) ? "not as it was received" : "missing") + " ("
                                + logs.file(log.get(0)) + "); everything else of its trace is kept. Add the same file"
                                + " again to mend it");
                    }
                });
        return faults;
    }

    private record Kept(LogFolder logs, String sha256, String name, long bytes) implements LogFile {
        @Override
        public InputStream open() throws IOException {
            return logs.open(sha256);
        }
    }
}
