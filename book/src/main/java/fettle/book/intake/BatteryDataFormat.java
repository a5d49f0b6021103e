package fettle.book.intake;

import de.siegmar.fastcsv.writer.CsvWriter;
import fettle.engine.trace.Trace;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import java.io.IOException;
import java.io.Writer;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The open Battery Data Format 1.3 of the Battery Data Alliance: its columns out, and its sign in. One file tells of one
 * test object; a pack is written as the test object, each cell as a file of its own.
 *
 * @see "Battery Data Alliance, battery-data-format, vocabulary 1.3.0, https://github.com/battery-data-alliance/battery-data-format"
 */
public final class BatteryDataFormat {
    private static final String CURRENT_LABEL = "Current / A";
    private static final String CURRENT_NAME = "current_ampere";
    private static final String VOLTAGE_LABEL = "Voltage / V";
    private static final String VOLTAGE_NAME = "voltage_volt";

    private BatteryDataFormat() {}

    /** Whether the current's column is labelled as the format demands, so that its sign is stated. */
    static boolean hasStatedSign(Mapping mapping) {
        boolean volts = mapping.of(ColumnRole.PACK_VOLTS)
                .filter(column ->
                        column.name().equals(VOLTAGE_LABEL) || column.name().equals(VOLTAGE_NAME))
                .isPresent();
        return volts
                && mapping.of(ColumnRole.AMPS)
                        .filter(column -> column.name().equals(CURRENT_LABEL)
                                || column.name().equals(CURRENT_NAME))
                        .isPresent();
    }

    /**
     * Writes the pack as the test object: time, volts, current (charging positive) and, where logged, unix time and
     * temperature. Every figure is printed with all its digits.
     *
     * @throws InputException if the trace has no volts or no current, which the format demands
     */
    public static void write(Trace trace, Writer into) throws IOException {
        require(trace);
        write(trace, trace.packVolts(), into);
    }

    /** @throws InputException if the trace lacks what the format demands */
    public static void require(Trace trace) {
        if (!trace.hasVolts()) {
            throw new InputException("format", "the trace has no volts; the battery data format demands them.");
        }
        if (!trace.hasCurrent()) {
            throw new InputException("format", "the trace has no current; the battery data format demands it.");
        }
    }

    /**
     * Writes one cell as the test object.
     *
     * @param cell from 1
     */
    public static void writeCell(Trace trace, int cell, Writer into) throws IOException {
        if (cell < 1 || cell > trace.cells()) {
            throw new InputException(
                    "cell", "cell is " + cell + "; expected 1 to " + trace.cells() + ", the cells that were logged.");
        }
        require(trace);
        write(trace, trace.cellVolts()[cell - 1], into);
    }

    private static void write(Trace trace, double[] volts, Writer into) throws IOException {
        Instant start = trace.startedAt();
        try (CsvWriter csv = CsvWriter.builder().build(into)) {
            List<String> header = new ArrayList<>(List.of("Test Time / s", VOLTAGE_LABEL, CURRENT_LABEL));
            if (start != null) {
                header.add("Unix Time / s");
            }
            if (trace.hasTemperature()) {
                header.add("Surface Temperature / degC");
            }
            csv.writeRecord(header);
            for (int i = 0; i < trace.size(); i++) {
                csv.writeRecord(row(trace, volts, start == null ? Double.NaN : start.toEpochMilli() / 1000.0, i));
            }
        }
    }

    private static List<String> row(Trace trace, double[] volts, double startSeconds, int i) {
        double seconds = trace.timeSeconds()[i];
        List<String> row = new ArrayList<>(
                List.of(Double.toString(seconds), figure(volts[i]), figure(0 - trace.currentAmps()[i])));
        if (!Double.isNaN(startSeconds)) {
            row.add(String.format(Locale.ROOT, "%.3f", startSeconds + seconds));
        }
        if (trace.hasTemperature()) {
            row.add(figure(TradeUnit.CELSIUS.fromSi(trace.temperatureKelvins()[i])));
        }
        return row;
    }

    private static String figure(double value) {
        return Double.isNaN(value) ? "" : Double.toString(value);
    }
}
