package fettle.book.store;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.SequenceInputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Enumeration;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.zip.GZIPInputStream;
import org.jdbi.v3.core.Handle;

/**
 * Packed logs inside a database, in pieces: a backup carries them so, to be one file; books before schema 7 held them so,
 * as base64.
 */
public final class LogPieces {
    private static final int PIECE_BYTES = 1024 * 1024;
    private static final String TABLE = "log_piece";
    private static final String FORMER_TABLE = "trace_file_part";

    private LogPieces() {}

    /**
     * Puts every log a copy of a book names beside its rows.
     *
     * @return the logs that could not be, as they are missing or damaged
     */
    public static List<String> pack(Handle copy, LogFolder logs) throws IOException {
        List<String> lost = new ArrayList<>();
        copy.execute("CREATE TABLE " + TABLE
                + " (sha256 TEXT NOT NULL, position INTEGER NOT NULL, packed BLOB NOT NULL, PRIMARY KEY (sha256, position))"
                + " STRICT");
        for (String sha256 : named(copy)) {
            if (!logs.isWhole(sha256)) {
                lost.add(sha256);
                continue;
            }
            try (InputStream in = Files.newInputStream(logs.file(sha256))) {
                int position = 1;
                for (byte[] piece = in.readNBytes(PIECE_BYTES); piece.length > 0; piece = in.readNBytes(PIECE_BYTES)) {
                    copy.execute("INSERT INTO " + TABLE + " VALUES (?, ?, ?)", sha256, position, piece);
                    position++;
                }
            }
        }
        return lost;
    }

    /** Logs among the pieces that are not as they were received. */
    public static List<String> damaged(Handle copy) {
        List<String> damaged = new ArrayList<>();
        if (!has(copy, TABLE)) {
            return damaged;
        }
        for (String sha256 : in(copy, TABLE)) {
            try (InputStream in = new GZIPInputStream(stream(position -> piece(copy, sha256, position)))) {
                if (!LogFolder.sha256(in).equals(sha256)) {
                    damaged.add(sha256);
                }
            } catch (IOException cut) {
                damaged.add(sha256);
            }
        }
        return damaged;
    }

    /** Moves the logs a database holds into a folder and takes them out of it; what is not whole is left behind. */
    public static void unpack(Handle handle, LogFolder logs) {
        if (has(handle, FORMER_TABLE)) {
            in(handle, FORMER_TABLE)
                    .forEach(sha256 -> unpack(logs, sha256, position -> formerPiece(handle, sha256, position)));
        }
        if (has(handle, TABLE)) {
            in(handle, TABLE).forEach(sha256 -> unpack(logs, sha256, position -> piece(handle, sha256, position)));
            handle.execute("DROP TABLE " + TABLE);
            handle.execute("VACUUM");
        }
    }

    private static void unpack(LogFolder logs, String sha256, IntFunction<Optional<byte[]>> fetch) {
        if (logs.isWhole(sha256)) {
            return;
        }
        try {
            logs.keepPacked(sha256, out -> copy(fetch, out));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static void copy(IntFunction<Optional<byte[]>> fetch, OutputStream out) throws IOException {
        try (InputStream in = stream(fetch)) {
            in.transferTo(out);
        }
    }

    private static boolean has(Handle handle, String table) {
        return handle.createQuery("SELECT count(*) FROM sqlite_master WHERE type = 'table' AND name = ?")
                        .bind(0, table)
                        .mapTo(Integer.class)
                        .one()
                > 0;
    }

    private static List<String> in(Handle handle, String table) {
        return handle.createQuery("SELECT DISTINCT sha256 FROM " + table + " ORDER BY sha256")
                .mapTo(String.class)
                .list();
    }

    private static List<String> named(Handle handle) {
        return in(handle, "trace_file");
    }

    private static Optional<byte[]> piece(Handle handle, String sha256, int position) {
        return handle.createQuery("SELECT packed FROM " + TABLE + " WHERE sha256 = ? AND position = ?")
                .bind(0, sha256)
                .bind(1, position)
                .mapTo(byte[].class)
                .findOne();
    }

    private static Optional<byte[]> formerPiece(Handle handle, String sha256, int position) {
        return handle.createQuery("SELECT packed FROM " + FORMER_TABLE + " WHERE sha256 = ? AND position = ?")
                .bind(0, sha256)
                .bind(1, position)
                .mapTo(String.class)
                .findOne()
                .map(Base64.getDecoder()::decode);
    }

    /** @param fetch gives a piece's bytes by its position, from 1; empty after the last */
    private static InputStream stream(IntFunction<Optional<byte[]>> fetch) {
        return new SequenceInputStream(new Enumeration<InputStream>() {
            private int position = 1;
            private Optional<byte[]> next = fetch.apply(1);

            @Override
            public boolean hasMoreElements() {
                return next.isPresent();
            }

            @Override
            public InputStream nextElement() {
                InputStream piece = new ByteArrayInputStream(next.orElseThrow());
                position++;
                next = fetch.apply(position);
                return piece;
            }
        });
    }
}
