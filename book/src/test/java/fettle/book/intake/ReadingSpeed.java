package fettle.book.intake;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import fettle.engine.trace.TraceLimits;
import fettle.engine.trace.TraceRecorder;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Measures the reading of a long generated log beside the bare CSV library. Its name keeps it out of ordinary test runs;
 * ask for it as {@code docs/performance.md} says.
 */
final class ReadingSpeed {
    private static final int ROWS = Integer.getInteger("fettle.rows", 2_000_000);
    private static final int ROUNDS = Integer.getInteger("fettle.rounds", 6);

    @TempDir
    Path folder;

    @Test
    void measure() throws IOException {
        LogFile log = LogFile.of(write());
        System.out.printf(
                Locale.ROOT, "%d rows, %.0f MB, heap limit %d MB%n", ROWS, log.bytes() / 1e6, heapMegabytes());
        for (int round = 1; round <= ROUNDS; round++) {
            double bare = seconds(() -> bare(log));
            double read = seconds(() -> read(log));
            double reviewed = seconds(() -> review(log));
            System.out.printf(
                    Locale.ROOT,
                    "round %d: bare %.2f s, read %.2f s (%.0f %% of its rows a second), read and reviewed %.2f s%n",
                    round,
                    bare,
                    read,
                    100 * bare / read,
                    reviewed);
        }
    }

    private Path write() throws IOException {
        Path file = folder.resolve("long.csv");
        try (BufferedWriter text = Files.newBufferedWriter(file)) {
            text.write("time_s,voltage_V,current_A,temperature_C\n");
            for (int i = 0; i < ROWS; i++) {
                double volts = 3.9 - 0.4 * i / ROWS - 0.01 * (i % 13);
                text.write(String.format(
                        Locale.ROOT, "%.3f,%.5f,%.5f,%.3f%n", i * 0.1, volts, (double) (i % 13), 25 + 10.0 * i / ROWS));
            }
        }
        return file;
    }

    private static long heapMegabytes() {
        return Runtime.getRuntime().maxMemory() / (1024 * 1024);
    }

    /** Time on the processor, which other work on the machine does not lengthen. */
    private static double seconds(Runnable work) {
        long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        work.run();
        return (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before) / 1e9;
    }

    private static void bare(LogFile log) {
        long fields = 0;
        try (Reader text = new InputStreamReader(log.open(), StandardCharsets.UTF_8);
                CsvReader<CsvRecord> csv = CsvReader.builder().ofCsvRecord(text)) {
            for (CsvRecord row : csv) {
                fields += row.getFieldCount();
            }
        } catch (IOException failed) {
            throw new AssertionError(failed);
        }
        if (fields != 4L * (ROWS + 1)) {
            throw new AssertionError(fields + " fields");
        }
    }

    private static void read(LogFile log) {
        long[] samples = new long[1];
        TraceReader.readParts(
                log,
                LogPreview.of(log, ReadingChoices.NONE, null),
                ZoneOffset.UTC,
                ReadingProgress.NONE,
                part -> samples[0] += part.size());
        if (samples[0] != ROWS) {
            throw new AssertionError(samples[0] + " samples");
        }
    }

    private static void review(LogFile log) {
        TraceRecorder recorder = new TraceRecorder(
                new TraceLimits(1, 3.0, 4.2, 20.0, 2.0, 333.15, 273.15, 318.15), "P01", TraceRecorder.Swaps.ASK);
        TraceReader.readParts(
                log,
                LogPreview.of(log, ReadingChoices.NONE, null),
                ZoneOffset.UTC,
                ReadingProgress.NONE,
                recorder::add);
    }
}
