package fettle.book.store;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.book.archive.Backup;
import fettle.book.archive.Export;
import fettle.book.archive.Import;
import fettle.book.archive.Restore;
import fettle.book.archive.Verification;
import fettle.book.record.Shapes;
import fettle.engine.trace.TraceRecord;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Books as the Fettle of each earlier schema wrote them, kept as SQL in {@code former}: they open, keep every entry with its
 * journal, and go out and come back like any other.
 */
final class FormerBooksTest {
    private static final int WITH_TRACES = 2;
    private static final int WITH_SHEETS = 3;
    private static final Instant NOON = Instant.parse("2026-12-01T12:00:00Z");
    private static final String LOG =
            "time_s,volts,amps\n0,16.4,0.1\n1,16.1,12.4\n2,15.9,14\n3,15.8,14.5\n4,16.3,0.2\n";

    @TempDir
    private Path folder;

    @ParameterizedTest(name = "schema {0}")
    @ValueSource(ints = {1, 2, 3})
    void opensAndKeepsEveryEntry(int version) throws IOException, SQLException {
        Path home = folder.resolve("home");
        List<String> journal = write(version, home);
        try (Book book = Book.open(home)) {
            requireAll(book, version, journal);
            Backup.write(book, folder.resolve("copy.sqlite"));
            Export.write(book, folder.resolve("first.zip"));
        }
        try (Book book = Book.open(folder.resolve("imported"))) {
            Import.read(book, folder.resolve("first.zip"));
            requireAll(book, version, journal);
            Export.write(book, folder.resolve("second.zip"));
        }
        assertThat(Files.mismatch(folder.resolve("first.zip"), folder.resolve("second.zip")))
                .isEqualTo(-1);
    }

    @ParameterizedTest(name = "schema {0}")
    @ValueSource(ints = {1, 2, 3})
    void isTakenAsABackup(int version) throws IOException, SQLException {
        Path former = folder.resolve("former");
        List<String> journal = write(version, former);
        Path home = folder.resolve("home");
        Restore.put(former.resolve("book.sqlite"), home, NOON);
        try (Book book = Book.open(home)) {
            requireAll(book, version, journal);
        }
    }

    private static void requireAll(Book book, int version, List<String> journal) throws IOException {
        assertThat(Verification.of(book)).isEmpty();
        assertThat(book.journal().recent(0, 100).stream()
                        .map(line -> line.row().sentence())
                        .toList())
                .containsExactlyElementsOf(journal);
        assertThat(book.items(Shapes.PACK).all()).singleElement().satisfies(pack -> {
            assertThat(pack.item().tag()).isEqualTo("P07");
            assertThat(pack.item().note()).isEqualTo("label, \"gentle\"");
        });
        assertThat(book.items(Shapes.CHECK).ofPack(1))
                .singleElement()
                .satisfies(check -> assertThat(check.item().cellRestVolts()).containsExactly(3.84, 3.83, 3.85, 3.84));
        assertThat(book.items(Shapes.CHARGE).ofPack(1)).hasSize(1);
        assertThat(book.items(Shapes.RUN).ofPack(1))
                .singleElement()
                .satisfies(run -> assertThat(run.item().craft()).isEqualTo("Kestrel"));
        assertThat(book.items(Shapes.CHARGER).all()).hasSize(1);
        assertThat(book.items(Shapes.SOURCE).all()).hasSize(1);
        assertThat(book.items(Shapes.RULE).all()).hasSize(1);
        assertThat(book.items(Shapes.SET_UP_SHEET).all()).hasSize(version >= WITH_SHEETS ? 1 : 0);
        assertThat(book.items(Shapes.TRACE).ofPack(1)).hasSize(version >= WITH_TRACES ? 1 : 0);
        for (Stored<TraceRecord> trace : book.items(Shapes.TRACE).ofPack(1)) {
            TraceRecord record = trace.item();
            try (InputStream log = book.traceFiles()
                    .kept(record.sha256(), record.fileName(), record.fileBytes())
                    .open()) {
                assertThat(new String(log.readAllBytes(), StandardCharsets.UTF_8))
                        .isEqualTo(LOG);
            }
        }
    }

    /** Makes the former book; answers its journal's sentences, newest first. */
    private static List<String> write(int version, Path home) throws IOException, SQLException {
        Files.createDirectories(home);
        try (InputStream in = FormerBooksTest.class.getResourceAsStream("/fettle/book/former/V" + version + ".sql");
                Connection connection = DriverManager.getConnection("jdbc:sqlite:" + home.resolve("book.sqlite"));
                Statement statement = connection.createStatement()) {
            String sql = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
            for (String one : sql.split("\n-- next\n")) {
                statement.executeUpdate(one);
            }
            assertThat(statement
                            .executeQuery("SELECT max(CAST(version AS INTEGER)) FROM flyway_schema_history")
                            .getInt(1))
                    .isEqualTo(version);
            try (var rows = statement.executeQuery("SELECT sentence FROM journal ORDER BY id DESC")) {
                List<String> sentences = new ArrayList<>();
                while (rows.next()) {
                    sentences.add(rows.getString(1));
                }
                return sentences;
            }
        }
    }
}
