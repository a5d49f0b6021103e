package fettle.desk.trace;

import fettle.engine.units.InputException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;

/** Logs given to the desk that wait to be confirmed: a few at a time, outside the book. Thread-safe. */
final class PendingLogs {
    private static final int MOST_WAITING = 8;

    private final Map<String, Path> waiting = new LinkedHashMap<>();

    /** Takes a log; returns the token it waits under. */
    synchronized String take(String name, InputStream content) {
        String plain = name.replaceAll("[^\\p{L}\\p{N} ._()+-]", "_").strip();
        try {
            Path folder = Files.createTempDirectory("fettle-log");
            Path file = folder.resolve(plain.isEmpty() || plain.startsWith(".") ? "log" + plain : plain);
            Files.copy(content, file);
            file.toFile().deleteOnExit();
            folder.toFile().deleteOnExit();
            String token = UUID.randomUUID().toString();
            waiting.put(token, file);
            if (waiting.size() > MOST_WAITING) {
                drop(waiting.keySet().iterator().next());
            }
            return token;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
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
        if (file == null) {
            return;
        }
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
