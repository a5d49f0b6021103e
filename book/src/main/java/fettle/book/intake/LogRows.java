package fettle.book.intake;

import de.siegmar.fastcsv.reader.CsvReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.PushbackReader;
import java.io.Reader;
import java.util.Arrays;
import java.util.Iterator;
import org.jspecify.annotations.Nullable;

/**
 * The rows of a log, one after the other. Logs hardly ever quote a field, so rows are parted here, in place, as long as no
 * quotation mark has been seen; from the line with the first one on, the CSV library parts them.
 */
final class LogRows implements Closeable {
    private static final int FIRST_CHARACTERS = 1 << 16;

    /** A line longer than this is left to the library, which refuses it. */
    private static final int MOST_CHARACTERS = 1 << 20;

    private final Reader text;
    private final Dialect dialect;
    private final char separator;
    private final LogRow row = new LogRow();
    private char[] buffer = new char[FIRST_CHARACTERS];
    private int from;
    private int to;
    private long line;
    private boolean afterReturn;
    private boolean ended;
    private @Nullable CsvReader<LogRow> library;
    private @Nullable Iterator<LogRow> rest;

    LogRows(Reader text, Dialect dialect) {
        this.text = text;
        this.dialect = dialect;
        this.separator = dialect.separator();
    }

    /** The next row that is not empty, good until the one after it is asked for; {@code null} after the last. */
    @Nullable
    LogRow next() throws IOException {
        while (rest == null) {
            if (afterReturn && (from < to || fill()) && buffer[from] == '\n') {
                from++; // the second half of the line end before
            }
            afterReturn = false;
            int end = part();
            if (rest != null) {
                break;
            }
            if (end < 0) {
                return null;
            }
            line++;
            boolean empty = end == from;
            afterReturn = end < to && buffer[end] == '\r';
            from = Math.min(to, end + 1);
            if (!empty) {
                return row;
            }
        }
        return rest.hasNext() ? rest.next() : null;
    }

    /** Parts the line that begins at {@link #from}; returns where it ends, −1 if there is none, and stops at a quotation mark. */
    private int part() throws IOException {
        row.begin(line + 1, buffer);
        int field = from;
        int at = from;
        while (true) {
            if (at == to && ended) {
                if (at == from) {
                    return -1;
                }
                row.add(field, at);
                return at;
            }
            if (at == to) {
                if (to - from >= MOST_CHARACTERS) {
                    handOver();
                    return -1;
                }
                ended = !fill();
                row.begin(line + 1, buffer); // what was there has moved: the line is parted again
                at = from;
                field = from;
                continue;
            }
            char each = buffer[at];
            if (each > '"' && each != separator) {
                at++;
            } else if (each == separator) {
                row.add(field, at);
                at++;
                field = at;
            } else if (each == '\n' || each == '\r') {
                row.add(field, at);
                return at;
            } else if (each == '"') {
                handOver();
                return -1;
            } else {
                at++;
            }
        }
    }

    /** Reads on behind what is still to be parted; false at the end of the text. */
    private boolean fill() throws IOException {
        if (from > 0) {
            System.arraycopy(buffer, from, buffer, 0, to - from);
            to -= from;
            from = 0;
        } else if (to == buffer.length) {
            buffer = Arrays.copyOf(buffer, 2 * buffer.length);
        }
        int count = text.read(buffer, to, buffer.length - to);
        to += Math.max(0, count);
        return count > 0;
    }

    private void handOver() throws IOException {
        PushbackReader left = new PushbackReader(text, Math.max(1, to - from));
        left.unread(buffer, from, to - from);
        CsvReader<LogRow> reader = dialect.fastRows(left, line);
        library = reader;
        rest = reader.iterator();
    }

    @Override
    public void close() throws IOException {
        if (library != null) {
            library.close();
        }
        text.close();
    }
}
