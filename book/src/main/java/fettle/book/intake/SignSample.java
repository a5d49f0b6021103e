package fettle.book.intake;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.StringReader;
import java.util.Arrays;
import java.util.List;

/** Takes volts and current of a log's beginning to tell the sign from. */
final class SignSample {
    private static final int MOST_ROWS = 50_000;

    private SignSample() {}

    static SignFinder.Finding of(DialectSniffer.Found found, Mapping mapping, String beginning) {
        List<Column> volts = mapping.of(ColumnRole.PACK_VOLTS).map(List::of).orElse(mapping.cells());
        if (volts.isEmpty()) {
            return new SignFinder.Finding(PositiveCurrent.UNCLEAR, "no volts were logged to compare it with");
        }
        int amps = mapping.of(ColumnRole.AMPS).orElseThrow().index();
        double[][] sample = new double[2][MOST_ROWS];
        int size = 0;
        char decimal = found.dialect().decimal();
        try (CsvReader<CsvRecord> csv =
                Dialect.rows(new StringReader(beginning), found.dialect().separator())) {
            for (CsvRecord row : csv) {
                boolean fits = row.getStartingLineNumber() >= found.dialect().firstDataLine()
                        && row.getFieldCount() == found.headings().size()
                        && !DialectSniffer.isComment(row);
                if (fits && size < MOST_ROWS) {
                    sample[0][size] = value(row, volts.get(0).index(), decimal);
                    sample[1][size] = value(row, amps, decimal);
                    size += Double.isNaN(sample[0][size] + sample[1][size]) ? 0 : 1;
                }
            }
        } catch (CsvParseException | IOException cutOff) {
            // The beginning may end inside a quoted field; the rows before it serve.
            size = Math.max(0, size);
        }
        return SignFinder.find(Arrays.copyOf(sample[0], size), Arrays.copyOf(sample[1], size));
    }

    private static double value(CsvRecord row, int index, char decimal) {
        String field = row.getField(index);
        return NumberText.isNumber(field, decimal) ? NumberText.read(field, decimal) : Double.NaN;
    }
}
