package fettle.book.intake;

import fettle.engine.units.InputException;
import java.io.BufferedInputStream;
import java.io.Closeable;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.util.zip.GZIPInputStream;

/** Opens a log as text: unpacked, its encoding found, what is no text refused by name. */
final class LogText {
    private static final int HEAD_BYTES = 64 * 1024;
    private static final int BUFFER_BYTES = 256 * 1024;
    private static final int MIB = 1024 * 1024;

    /** A log of steady readings packs to a fiftieth; gzip can reach a thousandth, of what is no log. */
    private static final long MOST_TIMES_UNPACKED = 100;

    private static final long LEAST_ALLOWED_UNPACKED = 16L * MIB;
    private static final double MOST_CONTROL_SHARE = 0.01;

    private LogText() {}

    /** Text of a log with the encoding it was read in. */
    record Opened(Reader reader, TextEncoding encoding) implements Closeable {
        @Override
        public void close() throws IOException {
            reader.close();
        }
    }

    /**
     * Opens a log; the caller closes the reader.
     *
     * @throws InputException if it is empty or no text
     */
    static Opened open(LogFile file, ReadingProgress progress) throws IOException {
        InputStream counted = new BufferedInputStream(new Counted(file, progress), BUFFER_BYTES);
        try {
            InputStream plain = unpacked(file, counted);
            plain.mark(HEAD_BYTES + 1);
            byte[] head = plain.readNBytes(HEAD_BYTES);
            plain.reset();
            refuseForeign(file, head);
            TextEncoding encoding = TextEncoding.of(head);
            plain.skipNBytes(encoding.markBytes());
            return new Opened(new InputStreamReader(plain, encoding.charset()), encoding);
        } catch (IOException | RuntimeException refused) {
            counted.close();
            throw refused;
        }
    }

    private static InputStream unpacked(LogFile file, InputStream in) throws IOException {
        in.mark(HEAD_BYTES);
        byte[] head = in.readNBytes(16);
        in.reset();
        if (!FileKind.isGzip(head)) {
            return in;
        }
        try {
            InputStream plain = new GZIPInputStream(in, BUFFER_BYTES);
            return new BufferedInputStream(new Unpacked(plain, file.bytes() * MOST_TIMES_UNPACKED), BUFFER_BYTES);
        } catch (IOException damaged) {
            throw new InputException("file", file.name() + " is a damaged gzip file. Copy it from the logger again.");
        }
    }

    private static void refuseForeign(LogFile file, byte[] head) {
        FileKind.ofForeign(head).ifPresent(what -> {
            throw new InputException(
                    "file",
                    file.name() + " is " + what
                            + ", not a table of figures. Export the log as CSV and give that file.");
        });
        boolean wide = TextEncoding.of(head).charset().name().startsWith("UTF-16");
        int control = 0;
        boolean blank = true;
        for (byte each : head) {
            boolean space = each == '\t' || each == '\n' || each == '\r' || each == ' ' || each == '\f';
            blank &= space;
            control += each >= 0 && each < ' ' && !space ? 1 : 0;
        }
        if (blank) {
            throw new InputException("file", file.name() + " is empty. Copy it from the logger again.");
        }
        if (!wide && control > MOST_CONTROL_SHARE * head.length) {
            throw new InputException(
                    "file",
                    file.name()
                            + " is not text: it holds bytes no table has. Export the log as CSV and give that file.");
        }
    }

    /** Ends with a fault where a file unpacks to what no log does. */
    private static final class Unpacked extends FilterInputStream {
        private final long most;
        private long left;

        Unpacked(InputStream plain, long most) {
            super(plain);
            this.most = Math.max(most, LEAST_ALLOWED_UNPACKED);
            this.left = this.most;
        }

        @Override
        public int read(byte[] into, int from, int length) throws IOException {
            int count = super.read(into, from, length);
            left -= Math.max(0, count);
            if (left < 0) {
                throw new IOException("it unpacks to more than " + most / MIB + " MiB, which no log of its size does");
            }
            return count;
        }
    }

    /** Counts the bytes of the file as received, and asks whether to go on. */
    private static final class Counted extends FilterInputStream {
        private final LogFile file;
        private final ReadingProgress progress;
        private long done;

        Counted(LogFile file, ReadingProgress progress) throws IOException {
            super(file.open());
            this.file = file;
            this.progress = progress;
        }

        @Override
        public int read(byte[] into, int from, int length) throws IOException {
            int count = super.read(into, from, length);
            done += Math.max(0, count);
            if (!progress.goOn(done, file.bytes())) {
                throw new ReadingStoppedException(file.name());
            }
            return count;
        }
    }
}
