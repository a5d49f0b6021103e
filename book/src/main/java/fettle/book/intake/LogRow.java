package fettle.book.intake;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import java.util.Arrays;

/**
 * One row of a log, its characters in one array that the next row overwrites, so that a figure is read without making text
 * of it first.
 */
final class LogRow {
    private static final int USUAL_CHARACTERS = 256;
    private static final int USUAL_FIELDS = 32;

    private char[] text = new char[USUAL_CHARACTERS];
    private int[] begins = new int[USUAL_FIELDS];
    private int[] ends = new int[USUAL_FIELDS];
    private int fields;
    private long line;

    int fields() {
        return fields;
    }

    /** Line it begins in, from 1. */
    long line() {
        return line;
    }

    /** A field as text; empty if the row has no such field. */
    String field(int index) {
        return index < fields ? new String(text, begins[index], ends[index] - begins[index]) : "";
    }

    /** A field as a number; see {@link NumberText}. */
    double number(int index, char decimal) {
        return index < fields ? NumberText.read(text, begins[index], ends[index], decimal) : Double.NaN;
    }

    boolean isBlank(int index) {
        for (int i = index < fields ? begins[index] : 0; index < fields && i < ends[index]; i++) {
            if (text[i] > ' ') {
                return false;
            }
        }
        return true;
    }

    boolean isComment() {
        for (int i = begins[0]; i < ends[0]; i++) {
            if (text[i] > ' ') {
                return !Character.isLetterOrDigit(text[i]) && DialectSniffer.isComment(field(0));
            }
        }
        return false;
    }

    /** A new row whose characters stand in an array of the caller. */
    void begin(long startingLine, char[] characters) {
        text = characters;
        line = startingLine;
        fields = 0;
    }

    /** Its next field, from {@code begin} (inclusive) to {@code end} (exclusive) of the array. */
    void add(int begin, int end) {
        if (fields == ends.length) {
            begins = Arrays.copyOf(begins, 2 * fields);
            ends = Arrays.copyOf(ends, 2 * fields);
        }
        begins[fields] = begin;
        ends[fields] = end;
        fields++;
    }

    private void begin(long startingLine) {
        line = startingLine;
        fields = 0;
    }

    private void add(char[] buffer, int offset, int length) {
        int from = fields == 0 ? 0 : ends[fields - 1];
        if (from + length > text.length) {
            text = Arrays.copyOf(text, 2 * (from + length));
        }
        System.arraycopy(buffer, offset, text, from, length);
        add(from, from + length);
    }

    /** Hands on every row in the same {@link LogRow}. */
    static final class Handler extends AbstractBaseCsvCallbackHandler<LogRow> {
        private final LogRow row = new LogRow();
        private final long linesBefore;

        /** @param linesBefore lines of the log before the first this reader sees */
        Handler(long linesBefore) {
            this.linesBefore = linesBefore;
        }

        @Override
        protected void handleBegin(long startingLineNumber) {
            row.begin(linesBefore + startingLineNumber);
        }

        @Override
        protected void handleField(int index, char[] buffer, int offset, int length, boolean quoted) {
            row.add(buffer, offset, length);
        }

        @Override
        protected LogRow buildRecord() {
            return row;
        }
    }
}
