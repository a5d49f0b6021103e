package fettle.book.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;

/**
 * The folder a book lives in.
 *
 * @param path the folder
 */
public record BookFolder(Path path) {
    /** The folder made ready to hold a book: there, a folder, and writable. */
    public static BookFolder ready(Path path) {
        Path folder = path.toAbsolutePath().normalize();
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new UnusableBookException(folder + " is a file; a book needs a folder. Name another folder.");
        }
        try {
            Files.createDirectories(folder);
        } catch (IOException refused) {
            throw new UnusableBookException(
                    "the folder " + folder + " cannot be made. Name a folder you may write to.", refused);
        }
        if (!Files.isWritable(folder)) {
            throw new UnusableBookException(
                    "the folder " + folder + " is read-only. Give yourself the right to write it, or name another.");
        }
        return new BookFolder(folder);
    }

    public Path file() {
        return path.resolve("book.sqlite");
    }

    /** Logs as received, beside the book. */
    public LogFolder logs() {
        return new LogFolder(path.resolve("logs"));
    }

    public Path lockFile() {
        return path.resolve("book.lock");
    }

    /** A restored book, whole on disk, about to take the place of the present one, of which a copy is kept. */
    public Path restoring() {
        return path.resolve("book.sqlite.restoring");
    }

    /**
     * Refuses a file with nothing in it in the book's place. SQLite would take it for a new book, and hide that one was
     * cut off.
     */
    public void refuseAnEmptyFile() {
        try {
            if (Files.exists(file()) && Files.size(file()) == 0) {
                throw new UnusableBookException("the book " + file() + " is an empty file. Restore the latest backup:"
                        + " book restore FILE, or delete it to begin a new book.");
            }
        } catch (IOException unreadable) {
            throw new UnusableBookException("the book " + file() + " cannot be read. Look after the disk.", unreadable);
        }
    }

    /** Every file SQLite keeps of a book; the last two are there only while it is in use or was cut off. */
    public List<Path> files() {
        return List.of(file(), path.resolve("book.sqlite-wal"), path.resolve("book.sqlite-shm"));
    }

    /**
     * Completes a restore, also one that was cut off: the restored book takes its place, without the log of the book
     * before it.
     */
    public void settleRestore() {
        if (Files.notExists(restoring())) {
            return;
        }
        try {
            for (Path log : files().subList(1, files().size())) {
                Files.deleteIfExists(log);
            }
            Files.move(restoring(), file(), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException failed) {
            throw new UnusableBookException(
                    "the restore of " + file() + " was cut off and cannot be completed. Look whether " + path
                            + " may be written, and open the book again.",
                    failed);
        }
    }
}
