package fettle.planner.timer;

import fettle.engine.trace.Trace;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Assumptions;

/** A measured record of the reference folder with time, volts and perhaps current (discharge negative there). */
final class MeasuredRecord {
    private MeasuredRecord() {}

    static Trace read(String file, boolean current) {
        Path path = folder().resolve(file);
        List<double[]> rows = new ArrayList<>();
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                file.endsWith(".gz") ? new GZIPInputStream(Files.newInputStream(path)) : Files.newInputStream(path),
                StandardCharsets.UTF_8))) {
            reader.readLine();
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                String[] cells = line.split(",");
                double seconds = Double.parseDouble(cells[0]);
                if (rows.isEmpty() || seconds > rows.get(rows.size() - 1)[0]) {
                    rows.add(new double[] {
                        seconds, Double.parseDouble(cells[1]), current ? -Double.parseDouble(cells[2]) : 0
                    });
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Trace.of(column(rows, 0), column(rows, 1), current ? column(rows, 2) : new double[0]);
    }

    private static double[] column(List<double[]> rows, int at) {
        return rows.stream().mapToDouble(row -> row[at]).toArray();
    }

    private static Path folder() {
        String named = System.getenv("FETTLE_REFERENCE");
        Path found = named == null ? null : Path.of(named);
        for (Path at = Path.of("").toAbsolutePath(); at != null && found == null; at = at.getParent()) {
            Path candidate = at.resolve("shared/reference");
            found = Files.isDirectory(candidate) ? candidate : null;
        }
        Assumptions.assumeTrue(
                found != null,
                "SKIPPED: no reference folder. Set FETTLE_REFERENCE or put it at ../shared/reference to run this test.");
        return found;
    }
}
