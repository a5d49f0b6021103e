package fettle.book.intake;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import fettle.engine.units.Fault;
import fettle.engine.units.InputException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A small file of figures in any dialect, all of it at once.
 *
 * @param file its name
 * @param dialect how it writes its table
 * @param names headings without their units; blank where there are none
 * @param units units as written behind the headings or in a row below them; blank where there are none
 * @param rows the rows of figures
 */
public record FigureTable(String file, Dialect dialect, List<String> names, List<String> units, List<Row> rows) {
    private static final int BEGINNING = 64 * 1024;
    private static final int MOST_ROWS = 200_000;
    private static final int MOST_FAULTS = 10;

    public FigureTable {
        names = List.copyOf(names);
        units = List.copyOf(units);
        rows = List.copyOf(rows);
    }

    /**
     * One row.
     *
     * @param line its line in the file, from 1
     * @param figures its figures; {@code NaN} where there is none
     */
    public record Row(long line, List<Double> figures) {
        public Row {
            figures = List.copyOf(figures);
        }
    }

    /**
     * Reads a file.
     *
     * @throws InputException if it is no table of figures, with line and column of each fault
     */
    public static FigureTable read(LogFile file) {
        DialectSniffer.Found found;
        try (LogText.Opened text = LogText.open(file, ReadingProgress.NONE)) {
            char[] beginning = new char[BEGINNING];
            int length = text.reader().read(beginning);
            found = DialectSniffer.sniff(
                    file.name(),
                    new String(beginning, 0, Math.max(0, length)),
                    text.encoding().charset().name());
        } catch (IOException | UncheckedIOException cut) {
            throw unreadable(file, cut);
        }
        List<ColumnNames.Heading> headings =
                found.headings().stream().map(ColumnNames::part).toList();
        List<String> units = new ArrayList<>();
        for (int at = 0; at < headings.size(); at++) {
            String below = ColumnNames.bare(found.units().get(at));
            units.add(
                    below.isBlank()
                            ? headings.get(at).unit().map(ColumnUnit::symbol).orElse("")
                            : below);
        }
        return new FigureTable(
                file.name(),
                found.dialect(),
                headings.stream().map(ColumnNames.Heading::words).toList(),
                units,
                rows(
                        file,
                        found,
                        headings.stream().map(ColumnNames.Heading::words).toList()));
    }

    /** One column, row by row; {@code NaN} where a row has no figure. */
    public double[] column(int at) {
        return rows.stream().mapToDouble(row -> row.figures().get(at)).toArray();
    }

    private static List<Row> rows(LogFile file, DialectSniffer.Found found, List<String> names) {
        List<Row> rows = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        Dialect dialect = found.dialect();
        try (LogText.Opened text = LogText.open(file, ReadingProgress.NONE);
                CsvReader<CsvRecord> csv = Dialect.rows(text.reader(), dialect.separator())) {
            for (CsvRecord row : csv) {
                if (row.getStartingLineNumber() < dialect.firstDataLine() || DialectSniffer.isComment(row)) {
                    continue;
                }
                rows.add(row(file.name(), row, dialect, names, faults));
                if (faults.size() >= MOST_FAULTS || rows.size() > MOST_ROWS) {
                    break;
                }
            }
        } catch (CsvParseException | IOException | UncheckedIOException cut) {
            throw unreadable(file, cut);
        }
        if (rows.size() > MOST_ROWS) {
            faults.add(
                    new Fault("file", file.name() + " has more than " + MOST_ROWS + " rows; cut it into its sweeps."));
        }
        if (!faults.isEmpty()) {
            throw new InputException(faults);
        }
        return rows;
    }

    private static Row row(String file, CsvRecord row, Dialect dialect, List<String> names, List<Fault> faults) {
        Double[] figures = new Double[names.size()];
        Arrays.fill(figures, Double.NaN);
        for (int at = 0; at < Math.min(figures.length, row.getFieldCount()); at++) {
            String field = row.getField(at);
            try {
                figures[at] = NumberText.read(field, dialect.decimal());
            } catch (NumberFormatException wrong) {
                faults.add(new Fault("file", notANumber(file, row, at, names.get(at), dialect.decimal())));
            }
        }
        return new Row(row.getStartingLineNumber(), List.of(figures));
    }

    private static String notANumber(String file, CsvRecord row, int at, String name, char decimal) {
        return file + " line " + row.getStartingLineNumber() + ", column " + (at + 1)
                + (name.isBlank() ? "" : " (" + name + ")") + ": \"" + row.getField(at)
                + "\" is not a number; expected a decimal " + (decimal == ',' ? "comma" : "point")
                + " as in the other rows. Mend that field.";
    }

    private static InputException unreadable(LogFile file, Exception cut) {
        return new InputException(
                "file",
                file.name() + " cannot be read to its end: "
                        + String.valueOf(cut.getMessage()).replace('\n', ' ') + ". Export it again.");
    }
}
