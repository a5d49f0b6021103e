package fettle.book.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** Holds a book for one process: a locked file with the holder's process id in it. The system frees it on a kill. */
public final class BookLock implements AutoCloseable {
    /**
     * Books open in this process. A second channel must not even be opened here: closing it would free the lock of the
     * first (java.nio.channels.FileLock, "platform dependencies").
     */
    private static final Set<Path> HELD_HERE = ConcurrentHashMap.newKeySet();

    private final Path held;
    private final FileChannel channel;

    private BookLock(Path held, FileChannel channel) {
        this.held = held;
        this.channel = channel;
    }

    public static BookLock take(BookFolder folder) {
        Path held = realPath(folder.path());
        if (!HELD_HERE.add(held)) {
            throw inUse(folder, String.valueOf(ProcessHandle.current().pid()));
        }
        try {
            return lock(folder, held);
        } catch (RuntimeException refused) {
            HELD_HERE.remove(held);
            throw refused;
        }
    }

    // The channel stays open, and with it the lock, until close.
    @SuppressWarnings("resource")
    private static BookLock lock(BookFolder folder, Path held) {
        try {
            FileChannel channel =
                    FileChannel.open(folder.lockFile(), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            FileLock lock = channel.tryLock();
            if (lock == null) {
                channel.close();
                throw inUse(folder, holder(folder));
            }
            sign(channel);
            return new BookLock(held, channel);
        } catch (IOException refused) {
            throw new UnusableBookException(
                    "the book in " + folder.path() + " cannot be locked. Look whether the folder is read-only or the"
                            + " disk full.",
                    refused);
        }
    }

    private static void sign(FileChannel channel) {
        try {
            channel.truncate(0);
            channel.write(StandardCharsets.UTF_8.encode(ProcessHandle.current().pid() + "\n"));
        } catch (IOException unsigned) {
            // The lock holds without it; a second user is then told of a process unknown.
        }
    }

    private static UnusableBookException inUse(BookFolder folder, String process) {
        return new UnusableBookException("the book in " + folder.path() + " is in use by process " + process
                + ". Close that Fettle first, or name another book.");
    }

    private static String holder(BookFolder folder) {
        try {
            String process = Files.readString(folder.lockFile()).strip();
            return process.isEmpty() ? "unknown" : process;
        } catch (IOException unreadable) {
            return "unknown";
        }
    }

    private static Path realPath(Path folder) {
        try {
            return folder.toRealPath();
        } catch (IOException unreadable) {
            throw new UnusableBookException("the folder " + folder + " cannot be read. Name another.", unreadable);
        }
    }

    @Override
    public void close() {
        try {
            channel.truncate(0);
            channel.close();
        } catch (IOException leftToTheSystem) {
            // The lock ends with the process at the latest; nothing of the book depends on this file's content.
        } finally {
            HELD_HERE.remove(held);
        }
    }
}
