package fettle.book.archive;

import fettle.book.store.BookFolder;
import fettle.book.store.BookLock;
import fettle.book.store.UnusableBookException;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** Puts a backup in place of a book. What was there is kept beside it. */
public final class Restore {
    private Restore() {}

    /**
     * Looks the backup through, then puts a copy of it in place.
     *
     * @param now names the folder in which the present book is kept
     * @return what was done, a line each
     * @throws UnusableBookException if the backup is not whole or the book is in use; nothing is changed then
     */
    @SuppressWarnings("try") // the lock is held, not used
    public static List<String> put(Path backup, Path path, Instant now) {
        BookCopy.requireFile(backup);
        BookFolder folder = BookFolder.ready(path);
        try (BookLock held = BookLock.take(folder)) {
            folder.settleRestore();
            return put(backup, folder, now);
        } catch (IOException failed) {
            throw new UnusableBookException(
                    "the restore into " + folder.path() + " stopped: " + failed.getMessage()
                            + ". Look whether the disk is full; nothing is lost.",
                    failed);
        }
    }

    private static List<String> put(Path backup, BookFolder folder, Instant now) throws IOException {
        Path part = folder.path().resolve("book.sqlite.part");
        List<String> done = new ArrayList<>();
        try {
            Files.copy(backup, part, StandardCopyOption.REPLACE_EXISTING);
            BookCopy.Settled copy = BookCopy.settle(part, backup, folder.logs());
            sync(part);
            keepPresent(folder, now, done);
            Files.move(part, folder.restoring(), StandardCopyOption.ATOMIC_MOVE);
            folder.settleRestore();
            done.add("restored " + backup + ", " + copy.changes() + " changes");
            done.addAll(copy.lostLogs());
            return done;
        } finally {
            Targets.drop(part);
        }
    }

    /** Copies what is there, so that until the restored book takes its place nothing has changed. */
    private static void keepPresent(BookFolder folder, Instant now, List<String> done) throws IOException {
        if (Files.notExists(folder.file())) {
            return;
        }
        Path kept = unusedFolder(folder.path(), "kept-" + now.toString().replaceAll("[^0-9TZ]", ""));
        for (Path file : folder.files()) {
            if (Files.exists(file)) {
                sync(Files.copy(file, kept.resolve(file.getFileName())));
            }
        }
        keepLogs(folder.logs().path(), kept.resolve(folder.logs().path().getFileName()));
        done.add("kept what was there in " + kept);
    }

    /** Logs never change, so a second name for each is a copy of it where the disk gives files several names. */
    private static void keepLogs(Path logs, Path kept) throws IOException {
        if (!Files.isDirectory(logs)) {
            return;
        }
        Files.createDirectory(kept);
        try (DirectoryStream<Path> files = Files.newDirectoryStream(logs)) {
            for (Path log : files) {
                Path second = kept.resolve(log.getFileName());
                try {
                    Files.createLink(second, log);
                } catch (UnsupportedOperationException | IOException oneNameOnly) {
                    sync(Files.copy(log, second));
                }
            }
        }
    }

    private static Path unusedFolder(Path parent, String name) throws IOException {
        Path folder = parent.resolve(name);
        for (int again = 2; Files.exists(folder); again++) {
            folder = parent.resolve(name + "-" + again);
        }
        return Files.createDirectory(folder);
    }

    private static void sync(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }
}
