package fettle.book.store;

import fettle.book.intake.LogFile;
import fettle.engine.units.InputException;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.SequenceInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Enumeration;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.jdbi.v3.core.Handle;

/**
 * Logs as received, kept by the SHA-256 of their bytes: the same file twice is kept once. Written and read in pieces, so
 * that memory does not grow with them. Thread-safe.
 */
public final class TraceFiles {
    private static final int PIECE_BYTES = 768 * 1024;
    private static final int COPY_BYTES = 64 * 1024;

    /** Packed; some 500 MB of table. What the book's archive can carry beside everything else. */
    private static final int MOST_PIECES = 170;

    private final Book book;

    TraceFiles(Book book) {
        this.book = book;
    }

    /** What a file's bytes are known by. */
    public static String sha256(LogFile file) {
        try (InputStream in = file.open()) {
            return sha256(in);
        } catch (IOException unreadable) {
            throw unreadable(file.name(), unreadable);
        }
    }

    /** Keeps a file as received, if it is not kept yet. */
    public void keep(LogFile file, String sha256) {
        book.inTransaction(handle -> {
            if (!isKept(handle, sha256)) {
                handle.execute("INSERT INTO trace_file (sha256, bytes) VALUES (?, ?)", sha256, file.bytes());
                pack(handle, file, sha256);
            }
            return true;
        });
    }

    /** A kept file, byte for byte as it was received. */
    public LogFile kept(String sha256, String name, long bytes) {
        return new Kept(sha256, name, bytes);
    }

    /** Kept files whose bytes are no longer what they were received as. */
    public static List<String> faults(Handle handle) {
        List<String> faults = new ArrayList<>();
        for (String sha256 : handle.createQuery("SELECT sha256 FROM trace_file ORDER BY sha256")
                .mapTo(String.class)
                .list()) {
            try (InputStream in = unpacked(position -> piece(handle, sha256, position))) {
                if (!sha256(in).equals(sha256)) {
                    faults.add("the log " + sha256 + " is not as it was received");
                }
            } catch (IOException | IllegalArgumentException damaged) {
                faults.add("the log " + sha256 + " cannot be unpacked");
            }
        }
        return faults;
    }

    private static boolean isKept(Handle handle, String sha256) {
        return handle.createQuery("SELECT count(*) FROM trace_file WHERE sha256 = ?")
                        .bind(0, sha256)
                        .mapTo(Long.class)
                        .one()
                > 0;
    }

    private static void pack(Handle handle, LogFile file, String sha256) {
        try (InputStream in = file.open();
                Pieces pieces = new Pieces(handle, file.name(), sha256);
                GZIPOutputStream gzip = new GZIPOutputStream(pieces, COPY_BYTES)) {
            in.transferTo(gzip);
        } catch (IOException unreadable) {
            throw unreadable(file.name(), unreadable);
        }
    }

    private static InputException unreadable(String name, IOException cause) {
        return new InputException("file", name + " cannot be read: " + cause.getMessage() + ".");
    }

    private static String sha256(InputStream in) throws IOException {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            byte[] piece = new byte[COPY_BYTES];
            for (int count = in.read(piece); count >= 0; count = in.read(piece)) {
                digest.update(piece, 0, count);
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException("every Java has SHA-256", never);
        }
    }

    /** @param fetch gives a piece's bytes by its position, from 1; empty after the last */
    private static InputStream unpacked(IntFunction<Optional<byte[]>> fetch) throws IOException {
        Enumeration<InputStream> pieces = new Enumeration<>() {
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
        };
        return new GZIPInputStream(new SequenceInputStream(pieces), COPY_BYTES);
    }

    private static Optional<byte[]> piece(Handle handle, String sha256, int position) {
        return handle.createQuery("SELECT packed FROM trace_file_part WHERE sha256 = ? AND position = ?")
                .bind(0, sha256)
                .bind(1, position)
                .mapTo(String.class)
                .findOne()
                .map(Base64.getDecoder()::decode);
    }

    /** Cuts what is written into pieces and stores each. */
    private static final class Pieces extends OutputStream {
        private final Handle handle;
        private final String name;
        private final String sha256;
        private final ByteArrayOutputStream piece = new ByteArrayOutputStream(PIECE_BYTES);
        private int position;

        Pieces(Handle handle, String name, String sha256) {
            this.handle = handle;
            this.name = name;
            this.sha256 = sha256;
        }

        @Override
        public void write(int single) {
            write(new byte[] {(byte) single}, 0, 1);
        }

        @Override
        public void write(byte[] bytes, int from, int length) {
            piece.write(bytes, from, length);
            if (piece.size() >= PIECE_BYTES) {
                store();
            }
        }

        @Override
        public void close() {
            if (piece.size() > 0) {
                store();
            }
        }

        private void store() {
            position++;
            if (position > MOST_PIECES) {
                throw new InputException(
                        "file",
                        name + " packs to more than " + MOST_PIECES * PIECE_BYTES / 1_000_000
                                + " MB, more than a book keeps of one log. Cut it into its runs.");
            }
            handle.execute(
                    "INSERT INTO trace_file_part (sha256, position, packed) VALUES (?, ?, ?)",
                    sha256,
                    position,
                    Base64.getEncoder().encodeToString(piece.toByteArray()));
            piece.reset();
        }
    }

    private final class Kept implements LogFile {
        private final String sha256;
        private final String name;
        private final long bytes;

        Kept(String sha256, String name, long bytes) {
            this.sha256 = sha256;
            this.name = name;
            this.bytes = bytes;
        }

        @Override
        public String name() {
            return name;
        }

        @Override
        public long bytes() {
            return bytes;
        }

        /** Its pieces are fetched one by one, each in a short reading of the book. */
        @Override
        public InputStream open() throws IOException {
            return unpacked(position -> book.inTransaction(handle -> piece(handle, sha256, position)));
        }
    }
}
