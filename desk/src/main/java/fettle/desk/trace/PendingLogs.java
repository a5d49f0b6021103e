package fettle.desk.trace;

import fettle.engine.units.InputException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** Logs given to the desk that wait to be confirmed: a few at a time, outside the book. Thread-safe. */
final class PendingLogs {
    private static final int MOST_WAITING = 8;

    /** A file's name may have 255 bytes, and a letter three. */
    private static final int LONGEST_NAME = 80;

    private static final long MOST_BYTES = 2L * 1024 * 1024 * 1024;
    private static final int COPY_BYTES = 64 * 1024;

    private final long mostBytes;
    private final Map<String, Path> waiting = new LinkedHashMap<>();

    PendingLogs() {
        this(MOST_BYTES);
    }

    PendingLogs(long mostBytes) {
        this.mostBytes = mostBytes;
        // what still waits when the process ends is removed then
        Runtime.getRuntime().addShutdownHook(new Thread(this::dropAll, "pending-logs"));
    }

    private synchronized void dropAll() {
        List.copyOf(waiting.keySet()).forEach(this::drop);
    }

    /** Takes a log; returns the token it waits under. */
    String take(String name, InputStream content) {
        Path file;
        try {
            file = file(Files.createTempDirectory("fettle-log"), plain(name));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        // whoever sends slowly must not keep the others waiting, so nothing is locked meanwhile
        try (OutputStream out = Files.newOutputStream(file)) {
            copy(content, out);
        } catch (IOException failed) {
            remove(file);
            throw new UncheckedIOException(failed);
        } catch (InputException tooLong) {
            remove(file);
            throw tooLong;
        }
        return hold(file);
    }

    private void copy(InputStream content, OutputStream out) throws IOException {
        byte[] piece = new byte[COPY_BYTES];
        long left = mostBytes;
        for (int count = content.read(piece); count >= 0; count = content.read(piece)) {
            left -= count;
            if (left < 0) {
                throw new InputException(
                        "file",
                        "the log is larger than " + mostBytes + " bytes. Cut it into its runs, or give it to"
                                + " fettle trace add.");
            }
            out.write(piece, 0, count);
        }
    }

    private synchronized String hold(Path file) {
        String token = UUID.randomUUID().toString();
        waiting.put(token, file);
        if (waiting.size() > MOST_WAITING) {
            drop(waiting.keySet().iterator().next());
        }
        return token;
    }

    private static String plain(String name) {
        String known = name.replaceAll("[^\\p{L}\\p{N} ._()+-]", "_").strip();
        String end = known.substring(Math.max(0, known.length() - LONGEST_NAME));
        return end.isEmpty() || end.startsWith(".") ? "log" + end : end;
    }

    /** Where the system's own encoding does not have a letter, the name goes without it. */
    private static Path file(Path folder, String plain) {
        try {
            return folder.resolve(plain);
        } catch (InvalidPathException unwritable) {
            return folder.resolve(plain.replaceAll("[^\\x20-\\x7e]", "_"));
        }
    }

    /** @throws InputException if nothing waits under that token any more */
    synchronized Path find(String token) {
        Path file = waiting.get(token);
        if (file == null) {
            throw new InputException("file", "the log is no longer held here. Choose the file again.");
        }
        return file;
    }

    synchronized void drop(String token) {
        Path file = waiting.remove(token);
        if (file != null) {
            remove(file);
        }
    }

    private static void remove(Path file) {
        try {
            Files.deleteIfExists(file);
            Path folder = file.getParent();
            if (folder != null) {
                Files.deleteIfExists(folder);
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
