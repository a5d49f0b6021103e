package fettle.book.intake;

import de.siegmar.fastcsv.reader.CsvParseException;
import java.io.IOException;
import java.io.StringReader;
import java.util.Arrays;
import java.util.List;

/** Takes volts and current of a log's beginning to tell the sign from; no more rows than it needs. */
final class SignSample {
    private static final int MOST_ROWS = 50_000;
    private static final int ROWS_AT_A_TIME = 5_000;

    private final double[] volts = new double[MOST_ROWS];
    private final double[] amps = new double[MOST_ROWS];
    private int size;

    private SignSample() {}

    static SignFinder.Finding of(DialectSniffer.Found found, Mapping mapping, String beginning) {
        List<Column> volts = mapping.of(ColumnRole.PACK_VOLTS).map(List::of).orElse(mapping.cells());
        if (volts.isEmpty()) {
            return new SignFinder.Finding(PositiveCurrent.UNCLEAR, "no volts were logged to compare it with");
        }
        Column amps = mapping.of(ColumnRole.AMPS).orElseThrow();
        return new SignSample().find(found.dialect(), volts.get(0), amps, beginning);
    }

    private SignFinder.Finding find(Dialect dialect, Column voltsColumn, Column ampsColumn, String beginning) {
        try (LogRows parted = new LogRows(new StringReader(beginning), dialect)) {
            for (LogRow row = parted.next(); row != null; row = parted.next()) {
                boolean took = row.line() >= dialect.firstDataLine()
                        && !row.isComment()
                        && take(
                                figure(row, voltsColumn, dialect.decimal()),
                                figure(row, ampsColumn, dialect.decimal()));
                if (took && size % ROWS_AT_A_TIME == 0) {
                    SignFinder.Finding finding = finding();
                    if (finding.positive() != PositiveCurrent.UNCLEAR || size == MOST_ROWS) {
                        return finding;
                    }
                }
            }
            return finding();
        } catch (CsvParseException | IOException cutOff) {
            // The beginning may end inside a quoted field; the rows before it serve.
            return finding();
        }
    }

    private boolean take(double voltsFigure, double ampsFigure) {
        if (Double.isNaN(voltsFigure + ampsFigure)) {
            return false;
        }
        volts[size] = voltsFigure;
        amps[size] = ampsFigure;
        size++;
        return true;
    }

    private SignFinder.Finding finding() {
        return SignFinder.find(Arrays.copyOf(volts, size), Arrays.copyOf(amps, size));
    }

    private static double figure(LogRow row, Column column, char decimal) {
        try {
            return row.number(column.index(), decimal);
        } catch (NumberFormatException text) {
            return Double.NaN;
        }
    }
}
