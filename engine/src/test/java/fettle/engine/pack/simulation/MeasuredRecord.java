package fettle.engine.pack.simulation;

import fettle.engine.reference.ReferenceFiles;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.zip.GZIPInputStream;

/**
 * A measured record: time, current (discharge positive), volts, and temperature where it has one.
 *
 * @param seconds time from its first row [s]
 * @param amps current [A]
 * @param volts terminal volts [V]
 * @param celsius case temperature or its rise [°C or K]; NaN where there is none
 */
record MeasuredRecord(double[] seconds, double[] amps, double[] volts, double[] celsius) {
    /** Columns by position; a negative sign turns a record in which charging is positive. */
    static MeasuredRecord read(String file, int time, int current, double sign, int volts, int celsius) {
        List<double[]> rows = lines(file).stream()
                .skip(1)
                .map(line -> Arrays.stream(line.split(",", -1))
                        .mapToDouble(MeasuredRecord::number)
                        .toArray())
                .toList();
        double start = rows.get(0)[time];
        return new MeasuredRecord(
                rows.stream().mapToDouble(row -> row[time] - start).toArray(),
                rows.stream().mapToDouble(row -> sign * row[current]).toArray(),
                rows.stream().mapToDouble(row -> row[volts]).toArray(),
                rows.stream()
                        .mapToDouble(row -> celsius < 0 ? Double.NaN : row[celsius])
                        .toArray());
    }

    private static double number(String cell) {
        return cell.matches("-?[0-9.]+") ? Double.parseDouble(cell) : Double.NaN;
    }

    private static List<String> lines(String file) {
        Path path = ReferenceFiles.path(file);
        try (BufferedReader reader = file.endsWith(".gz")
                ? new BufferedReader(
                        new InputStreamReader(new GZIPInputStream(Files.newInputStream(path)), StandardCharsets.UTF_8))
                : Files.newBufferedReader(path)) {
            return reader.lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Rows from one time up to another, its clock and its rise starting anew. */
    MeasuredRecord between(double from, double to) {
        int first = (int) Arrays.stream(seconds).filter(t -> t < from).count();
        int end = (int) Arrays.stream(seconds).filter(t -> t <= to).count();
        double[] clock =
                Arrays.stream(seconds, first, end).map(t -> t - seconds[first]).toArray();
        return new MeasuredRecord(
                clock,
                Arrays.copyOfRange(amps, first, end),
                Arrays.copyOfRange(volts, first, end),
                Arrays.copyOfRange(celsius, first, end));
    }

    /** Charge out at every row, by trapezoid [C]. */
    double[] removed() {
        double[] removed = new double[seconds.length];
        for (int row = 1; row < removed.length; row++) {
            removed[row] = removed[row - 1] + 0.5 * (amps[row] + amps[row - 1]) * (seconds[row] - seconds[row - 1]);
        }
        return removed;
    }

    /** Volts at a charge out, straight between rows [V]. */
    double voltsAt(double coulombs) {
        return between(removed(), volts, coulombs);
    }

    double voltsAtSeconds(double time) {
        return between(seconds, volts, time);
    }

    /** When the volts first fall to a cut-off [s]. */
    double endSeconds(double cutOff) {
        for (int row = 1; row < volts.length; row++) {
            if (volts[row] <= cutOff) {
                double share = (volts[row - 1] - cutOff) / (volts[row - 1] - volts[row]);
                return seconds[row - 1] + share * (seconds[row] - seconds[row - 1]);
            }
        }
        throw new IllegalStateException("never reaches " + cutOff + " V");
    }

    double largestRise() {
        return Arrays.stream(celsius).max().orElseThrow() - celsius[0];
    }

    static double between(double[] x, double[] y, double at) {
        int found = Arrays.binarySearch(x, at);
        int row = Math.max(0, Math.min(x.length - 2, found >= 0 ? found : -found - 2));
        double width = x[row + 1] - x[row];
        double share = width > 0 ? (at - x[row]) / width : 1;
        return y[row] + share * (y[row + 1] - y[row]);
    }
}
