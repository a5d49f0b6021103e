package fettle.bench;

import fettle.book.intake.LogFile;
import fettle.book.intake.LogPreview;
import fettle.book.intake.ReadingChoices;
import fettle.book.intake.TraceReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.ZoneOffset;
import java.util.Locale;

/**
 * Reading of a generated log beside the CSV reader of an analytic database on one thread, in the same run: both find columns and
 * types by themselves and read every figure. The database's driver must be on the class path.
 */
public final class ReadingBesideDatabase {
    private static final int ROWS = Integer.getInteger("fettle.rows", 2_000_000);
    private static final int ROUNDS = 6;

    private ReadingBesideDatabase() {}

    /** Prints a line for each round. */
    public static void main(String[] args) throws IOException, SQLException {
        Path file = Files.createTempFile("fettle-reading", ".csv");
        try (Connection database = DriverManager.getConnection("jdbc:duckdb:");
                Statement statement = database.createStatement()) {
            write(file);
            statement.execute("SET threads = 1");
            for (int round = 1; round <= ROUNDS; round++) {
                double ours = seconds(() -> read(file));
                double theirs = seconds(() -> query(statement, file));
                System.out.printf(
                        Locale.ROOT,
                        "round %d: %d rows, %.0f MB: database %.2f s, ours %.2f s, %.0f %% of its rows a second%n",
                        round,
                        ROWS,
                        Files.size(file) / 1e6,
                        theirs,
                        ours,
                        100 * theirs / ours);
            }
        } finally {
            Files.delete(file);
        }
    }

    private static void write(Path file) throws IOException {
        try (BufferedWriter text = Files.newBufferedWriter(file)) {
            text.write("time_s,voltage_V,current_A,temperature_C\n");
            for (int i = 0; i < ROWS; i++) {
                double volts = 3.9 - 0.4 * i / ROWS - 0.01 * (i % 13);
                text.write(String.format(
                        Locale.ROOT, "%.3f,%.5f,%.5f,%.3f%n", i * 0.1, volts, (double) (i % 13), 25 + 10.0 * i / ROWS));
            }
        }
    }

    private static double seconds(Runnable work) {
        long begun = System.nanoTime();
        work.run();
        return (System.nanoTime() - begun) / 1e9;
    }

    private static void read(Path file) {
        LogFile log = LogFile.of(file);
        long[] samples = new long[1];
        TraceReader.readParts(
                log,
                LogPreview.of(log, ReadingChoices.NONE, null),
                ZoneOffset.UTC,
                (done, total) -> true,
                part -> samples[0] += part.size());
        require(samples[0]);
    }

    private static void query(Statement statement, Path file) {
        String sql =
                "SELECT count(*), sum(time_s), sum(\"voltage_V\"), sum(\"current_A\"), sum(\"temperature_C\") FROM read_csv('"
                        + file + "')";
        try (ResultSet result = statement.executeQuery(sql)) {
            result.next();
            require(result.getLong(1));
        } catch (SQLException failed) {
            throw new IllegalStateException(failed);
        }
    }

    private static void require(long rows) {
        if (rows != ROWS) {
            throw new IllegalStateException(rows + " rows read; expected " + ROWS);
        }
    }
}
