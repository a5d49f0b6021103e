package fettle.book.intake;

import fettle.engine.units.InputException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** A log as received: its name, its size and its bytes, which can be read more than once. */
public interface LogFile {
    /** The name it was received under, for messages. */
    String name();

    /** Its size as received [bytes]. */
    long bytes();

    InputStream open() throws IOException;

    /**
     * A log on the disk.
     *
     * @throws InputException if there is no such file, or it cannot be read or is empty
     */
    static LogFile of(Path path) {
        if (!Files.isRegularFile(path)) {
            throw new InputException("file", path + " is not a file. Name a log, e.g. flight.csv.");
        }
        try {
            return new OnDisk(path, Files.size(path));
        } catch (IOException unreadable) {
            throw new InputException("file", path + " cannot be read: " + unreadable.getMessage() + ".");
        }
    }

    /** @param bytes its size when it was named */
    record OnDisk(Path path, long bytes) implements LogFile {
        @Override
        public String name() {
            return String.valueOf(path.getFileName());
        }

        @Override
        public InputStream open() throws IOException {
            return Files.newInputStream(path);
        }
    }
}
