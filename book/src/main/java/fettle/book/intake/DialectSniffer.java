package fettle.book.intake;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import fettle.engine.units.InputException;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Finds out how a log writes its table from its beginning. */
final class DialectSniffer {
    private static final char[] SEPARATORS = {',', ';', '\t', '|', ' '};
    private static final char[] DECIMALS = {'.', ','};
    private static final int ROWS_LOOKED_AT = 200;
    private static final int MOST_COLUMNS = 1_000;
    private static final String COMMENT_SIGNS = "#%";

    /** One way to part the beginning into fields. */
    private record Parted(char separator, char decimal, List<CsvRecord> rows, int width, double score) {}

    /**
     * What was found.
     *
     * @param headings names of the columns, as many as the rows have fields
     * @param units what stands in the row of units below; blank where there is none
     * @param rows first rows of figures
     */
    record Found(Dialect dialect, List<String> headings, List<String> units, List<CsvRecord> rows) {}

    private DialectSniffer() {}

    static Found sniff(String file, String beginning, String encoding) {
        List<Parted> ways = new ArrayList<>();
        for (char separator : SEPARATORS) {
            for (char decimal : DECIMALS) {
                ways.add(part(beginning, separator, decimal));
            }
        }
        refuseTooWide(file, ways);
        Parted best = ways.stream()
                .filter(way -> way.score() > 0)
                .max(Comparator.comparingDouble(Parted::score))
                .orElseThrow(() -> new InputException(
                        "file",
                        file + " holds no rows of figures: no line has two or more numbers between commas, semicolons,"
                                + " tabs or bars. Export the log as CSV and give that file."));
        return found(best, encoding, Dialect.Quotes.of(beginning));
    }

    private static void refuseTooWide(String file, List<Parted> ways) {
        int widest = ways.stream().mapToInt(Parted::width).max().orElse(0);
        if (widest > MOST_COLUMNS) {
            throw new InputException(
                    "file",
                    file + " has " + widest + " columns; expected at most " + MOST_COLUMNS
                            + ". Export the columns of one pack and give that file.");
        }
    }

    private static Parted part(String text, char separator, char decimal) {
        List<CsvRecord> rows = new ArrayList<>();
        try (CsvReader<CsvRecord> csv = Dialect.rows(new StringReader(text), separator)) {
            for (CsvRecord row : csv) {
                if (rows.size() == ROWS_LOOKED_AT) {
                    break;
                }
                rows.add(row);
            }
        } catch (CsvParseException | IOException malformed) {
            return new Parted(separator, decimal, List.of(), 0, 0);
        }
        int width = usualWidth(rows, decimal);
        double score = rows.stream()
                .filter(row -> row.getFieldCount() == width && !isComment(row))
                .mapToInt(row -> figures(row, decimal))
                .filter(figures -> figures >= 2)
                .mapToDouble(figures -> figures * figures / (double) width)
                .sum();
        return new Parted(separator, decimal, rows, width, score);
    }

    /** The field count that most rows of figures have. */
    private static int usualWidth(List<CsvRecord> rows, char decimal) {
        return rows.stream()
                .filter(row -> figures(row, decimal) >= 2 && !isComment(row))
                .mapToInt(CsvRecord::getFieldCount)
                .boxed()
                .collect(Collectors.groupingBy(width -> width, TreeMap::new, Collectors.counting()))
                .entrySet()
                .stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse(0);
    }

    /** Fields that hold a figure or a stamp. */
    static int figures(CsvRecord row, char decimal) {
        int count = 0;
        for (int i = 0; i < row.getFieldCount(); i++) {
            String field = row.getField(i);
            count += NumberText.isNumber(field, decimal) || isStamp(field) ? 1 : 0;
        }
        return count;
    }

    static boolean isStamp(String field) {
        return field.matches("\\s*(\\d{1,4}[-./]\\d{1,2}[-./]\\d{1,4}[T ]*)?\\d{1,4}:\\d{1,2}[^;\\t]*")
                || field.matches("\\s*\\d{1,4}[-./]\\d{1,2}[-./]\\d{1,4}\\s*");
    }

    static boolean isComment(CsvRecord row) {
        return isComment(row.getField(0));
    }

    /** Whether a row whose first field is this is a comment. */
    static boolean isComment(String first) {
        int at = 0;
        while (at < first.length() && first.charAt(at) <= ' ') {
            at++;
        }
        return at < first.length() && (COMMENT_SIGNS.indexOf(first.charAt(at)) >= 0 || first.startsWith("//", at));
    }

    private static Found found(Parted way, String encoding, Dialect.Quotes quotes) {
        int width = usualWidth(way.rows(), way.decimal());
        int data = firstData(way, width);
        int at = data - 1;
        List<String> units = blanks(width);
        if (at > 0 && isUnits(way.rows().get(at)) && fits(way.rows().get(at - 1), width)) {
            units = fields(way.rows().get(at), width);
            at--;
        }
        CsvRecord heading =
                at >= 0 && fits(way.rows().get(at), width) ? way.rows().get(at) : null;
        List<String> headings = heading == null ? blanks(width) : fields(heading, width);
        if (heading != null && isComment(heading)) {
            headings.set(0, headings.get(0).replaceFirst("^\\s*[#%/]+\\s*", ""));
        }
        Dialect dialect = new Dialect(
                encoding,
                way.separator(),
                way.decimal(),
                heading == null ? 0 : heading.getStartingLineNumber(),
                way.rows().get(data).getStartingLineNumber(),
                quotes);
        return new Found(
                dialect, headings, units, way.rows().subList(data, way.rows().size()));
    }

    private static int firstData(Parted way, int width) {
        for (int i = 0; i < way.rows().size(); i++) {
            CsvRecord row = way.rows().get(i);
            if (row.getFieldCount() == width && figures(row, way.decimal()) >= 2 && !isComment(row)) {
                return i;
            }
        }
        throw new IllegalStateException("no row of figures among rows that were counted");
    }

    private static boolean fits(CsvRecord row, int width) {
        return row.getFieldCount() >= Math.max(2, width - 1) && row.getFieldCount() <= width + 1;
    }

    private static boolean isUnits(CsvRecord row) {
        int units = 0;
        int filled = 0;
        for (int i = 0; i < row.getFieldCount(); i++) {
            String field = row.getField(i);
            filled += field.isBlank() ? 0 : 1;
            units += ColumnUnit.written(ColumnNames.bare(field)).isPresent() ? 1 : 0;
        }
        return units >= 1 && units * 2 >= filled;
    }

    private static List<String> fields(CsvRecord row, int width) {
        List<String> fields = blanks(width);
        for (int i = 0; i < Math.min(width, row.getFieldCount()); i++) {
            fields.set(i, row.getField(i).strip());
        }
        return fields;
    }

    private static List<String> blanks(int width) {
        return new ArrayList<>(Collections.nCopies(width, ""));
    }
}
