package fettle.engine.trace;

import fettle.engine.reference.ReferenceFiles;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.zip.GZIPInputStream;

/** Measured reference files as traces, read plainly: rows whose time does not rise are left out. */
public final class MeasuredTraces {
    /** Which way the file's current counts. */
    public enum Sign {
        DISCHARGE_POSITIVE,
        DISCHARGE_NEGATIVE
    }

    private MeasuredTraces() {}

    /** A file with columns {@code time_s}, {@code voltage_V}, {@code current_A} and perhaps a temperature in °C. */
    public static Trace read(String file, Sign sign) {
        return rows(file, sign, "", "");
    }

    /** The rows of such a file in which one column holds one text. */
    public static Trace rows(String file, Sign sign, String column, String value) {
        List<String[]> rows = table(file);
        List<String> header = Arrays.asList(rows.get(0));
        List<double[]> kept = new ArrayList<>();
        int time = header.indexOf("time_s");
        int only = header.indexOf(column);
        for (String[] row : rows.subList(1, rows.size())) {
            double seconds = Double.parseDouble(row[time]);
            boolean rises = kept.isEmpty() || seconds > kept.get(kept.size() - 1)[0];
            if (rises && (only < 0 || row[only].equals(value))) {
                kept.add(new double[] {
                    seconds,
                    number(row, header, "voltage_V"),
                    number(row, header, "current_A") * (sign == Sign.DISCHARGE_POSITIVE ? 1 : -1),
                    number(row, header, "temperature_C", "case_temp_C") + 273.15
                });
            }
        }
        boolean current = header.contains("current_A");
        boolean warmth = header.contains("temperature_C") || header.contains("case_temp_C");
        return new Trace(
                column(kept, 0),
                column(kept, 1),
                current ? column(kept, 2) : new double[0],
                new double[0][],
                warmth ? column(kept, 3) : new double[0],
                null);
    }

    private static double number(String[] row, List<String> header, String... names) {
        return Arrays.stream(names)
                .mapToInt(header::indexOf)
                .filter(index -> index >= 0)
                .mapToDouble(index -> Double.parseDouble(row[index]))
                .findFirst()
                .orElse(Double.NaN);
    }

    private static double[] column(List<double[]> rows, int index) {
        return rows.stream().mapToDouble(row -> row[index]).toArray();
    }

    /** Every row of a file, plain or gzip, header included. */
    public static List<String[]> table(String file) {
        Path path = ReferenceFiles.path(file);
        try (InputStream raw = Files.newInputStream(path);
                InputStream plain = file.endsWith(".gz") ? new GZIPInputStream(raw) : raw;
                BufferedReader lines = new BufferedReader(new InputStreamReader(plain, StandardCharsets.UTF_8))) {
            return lines.lines().map(line -> line.split(",", -1)).toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
