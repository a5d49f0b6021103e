package fettle.book.intake;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.Reader;

/**
 * How a log writes its table.
 *
 * @param encoding name of the encoding
 * @param separator between fields
 * @param decimal decimal sign, point or comma
 * @param headerLine line of the headings, from 1; 0 if there are none
 * @param firstDataLine line of the first row of figures, from 1
 * @param quotes whether blanks can stand before a quotation mark
 */
public record Dialect(
        String encoding, char separator, char decimal, long headerLine, long firstDataLine, Quotes quotes) {
    /** Where quotation marks can stand. Logs without blanks before them are parted faster. */
    public enum Quotes {
        AT_ONCE,
        AFTER_BLANKS;

        static Quotes of(String beginning) {
            return beginning.contains(" \"") ? AFTER_BLANKS : AT_ONCE;
        }
    }

    /** Longest row; an open quotation mark would else swallow the rest of the file. */
    private static final int MOST_ROW_CHARACTERS = 1 << 20;

    /** E.g. {@code UTF-8, separated by semicolons, decimal comma, headings in line 3, figures from line 5}. */
    public String words() {
        String between = switch (separator) {
            case '\t' -> "tabs";
            case ';' -> "semicolons";
            case '|' -> "bars";
            case ' ' -> "spaces";
            default -> "commas";
        };
        return encoding + ", separated by " + between + ", decimal " + (decimal == ',' ? "comma" : "point") + ", "
                + (headerLine > 0 ? "headings in line " + headerLine : "no headings") + ", figures from line "
                + firstDataLine;
    }

    static CsvReader<CsvRecord> rows(Reader text, char separator) {
        return parting(separator, Quotes.AFTER_BLANKS).ofCsvRecord(text);
    }

    /** The same rows without making text of every field; each is good until the next is asked for. */
    CsvReader<LogRow> fastRows(Reader text, long linesBefore) {
        return parting(separator, quotes).build(new LogRow.Handler(linesBefore), text);
    }

    private static CsvReader.CsvReaderBuilder parting(char separator, Quotes quotes) {
        return CsvReader.builder()
                .fieldSeparator(separator)
                .quoteCharacter('"')
                .commentStrategy(CommentStrategy.NONE)
                .skipEmptyLines(true)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .trimWhitespacesAroundQuotes(quotes == Quotes.AFTER_BLANKS)
                .maxBufferSize(MOST_ROW_CHARACTERS);
    }
}
