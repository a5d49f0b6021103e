package fettle.book.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fettle.book.BookFixtures;
import fettle.book.archive.Backup;
import fettle.book.archive.Export;
import fettle.book.archive.Import;
import fettle.book.archive.Restore;
import fettle.book.archive.Verification;
import fettle.book.intake.LogFile;
import fettle.book.record.Row;
import fettle.book.record.Shapes;
import fettle.engine.trace.TraceRecord;
import fettle.engine.units.InputException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.time.Instant;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.zip.GZIPOutputStream;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Logs beside the book: what a kill, a flipped bit or a missing file costs, and how they go out and come back. */
final class TraceFilesTest {
    private static final Instant NOON = Instant.parse("2026-06-01T12:00:00Z");

    @TempDir
    private Path folder;

    private Path home() {
        return folder.resolve("home");
    }

    private LogFile log(String name, String content) {
        try {
            return LogFile.of(Files.writeString(folder.resolve(name), content));
        } catch (IOException failed) {
            throw new AssertionError(failed);
        }
    }

    /** Adds a trace as the workshop does: file first, row after. */
    private static String add(Book book, LogFile log) {
        String sha256 = TraceFiles.sha256(log);
        book.traceFiles().keep(log, sha256);
        book.traceFiles().name(log, sha256);
        TraceRecord record = new TraceRecord(
                log.name(),
                sha256,
                log.bytes(),
                "{}",
                2,
                0,
                true,
                null,
                1,
                null,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                "",
                "");
        Row beside = Row.empty().with("pack_id", 1L).with("typed", "");
        book.items(Shapes.TRACE).add(record, beside, new Note(NOON, "Robin", "added " + log.name(), "P01"));
        return sha256;
    }

    private static String text(Book book, String sha256) throws IOException {
        try (InputStream in = book.traceFiles().kept(sha256, "flight.csv", 1).open()) {
            return new String(in.readAllBytes());
        }
    }

    @Test
    void whatAKillLeavesBehindIsSweptAndNoRowIsWithoutItsFile() throws IOException {
        String kept;
        try (Book book = Book.open(home())) {
            BookFixtures.fill(book);
            kept = add(book, log("flight.csv", "time,volts\n0,4\n"));
            book.traceFiles().keep(log("cut.csv", "time,volts\n0,3\n"), "ab".repeat(32));
        }
        Path logs = home().resolve("logs");
        Files.writeString(logs.resolve("cd".repeat(32) + ".part"), "half");
        assertThat(logs.resolve("ab".repeat(32) + ".gz")).exists();
        try (Book book = Book.open(home())) {
            assertThat(text(book, kept)).isEqualTo("time,volts\n0,4\n");
            assertThat(Verification.of(book)).isEmpty();
        }
        try (var left = Files.list(logs)) {
            assertThat(left).containsExactly(logs.resolve(kept + ".gz"));
        }
    }

    @Test
    void aFlippedBitLosesThatLogAloneAndTheSameFileMendsIt() throws IOException {
        try (Book book = Book.open(home())) {
            BookFixtures.fill(book);
            LogFile first = log("flight.csv", "time,volts\n0,4\n1,4\n");
            String damaged = add(book, first);
            String whole = add(book, log("other.csv", "time,volts\n0,3\n"));
            Path file = book.folder().logs().file(damaged);
            byte[] bytes = Files.readAllBytes(file);
            bytes[bytes.length / 2] ^= 0x10;
            Files.write(file, bytes);

            assertThat(Verification.of(book))
                    .singleElement()
                    .asString()
                    .contains("flight.csv is not as it was received");
            assertThatThrownBy(() -> text(book, damaged))
                    .isInstanceOf(InputException.class)
                    .hasMessageContaining("the log flight.csv is damaged", "add the same file again");
            assertThat(text(book, whole)).isEqualTo("time,volts\n0,3\n");
            assertThat(book.items(Shapes.TRACE).all()).hasSize(2);

            book.traceFiles().keep(first, damaged);
            assertThat(Verification.of(book)).isEmpty();
        }
    }

    @Test
    void aMissingLogIsLostAloneInBackupAndArchive() throws IOException {
        Path backup = folder.resolve("copy.sqlite");
        Path archive = folder.resolve("copy.zip");
        String there;
        try (Book book = Book.open(home())) {
            BookFixtures.fill(book);
            String gone = add(book, log("flight.csv", "time,volts\n0,4\n1,4\n"));
            there = add(book, log("other.csv", "time,volts\n0,3\n"));
            Files.delete(book.folder().logs().file(gone));
            assertThat(Verification.of(book)).singleElement().asString().contains("flight.csv is missing");
            assertThat(Backup.write(book, backup)).anyMatch(line -> line.contains(gone + " is missing or damaged"));
            assertThat(Export.write(book, archive))
                    .anyMatch(line -> line.contains("1 log"))
                    .anyMatch(line -> line.contains(gone + " is missing or damaged"));
        }
        Path restored = folder.resolve("restored");
        assertThat(Restore.put(backup, restored, NOON)).anyMatch(line -> line.contains("flight.csv is missing"));
        Path imported = folder.resolve("imported");
        try (Book book = Book.open(imported)) {
            assertThat(Import.read(book, archive)).anyMatch(line -> line.contains("flight.csv is missing"));
        }
        for (Path copy : List.of(restored, imported)) {
            try (Book book = Book.open(copy)) {
                assertThat(text(book, there)).isEqualTo("time,volts\n0,3\n");
                assertThat(book.items(Shapes.TRACE).all()).hasSize(2);
            }
        }
    }

    @Test
    void restoringAnOlderBackupKeepsTheLogsOfWhatWasThere() throws IOException {
        Path backup = folder.resolve("copy.sqlite");
        String later;
        try (Book book = Book.open(home())) {
            BookFixtures.fill(book);
            Backup.write(book, backup);
            later = add(book, log("later.csv", "time,volts\n0,4\n"));
        }
        Restore.put(backup, home(), NOON);
        try (Book book = Book.open(home())) {
            assertThat(book.items(Shapes.TRACE).all()).isEmpty();
            assertThat(book.folder().logs().file(later)).doesNotExist();
        }
        try (Book kept = Book.open(home().resolve("kept-20260601T120000Z"))) {
            assertThat(text(kept, later)).isEqualTo("time,volts\n0,4\n");
        }
    }

    /** Schema 6 held logs inside the database, as base64 of gzip in pieces. */
    @Test
    void movesTheLogsOfAnEarlierBookBesideIt() throws Exception {
        Files.createDirectories(home());
        Path file = home().resolve("book.sqlite");
        Flyway.configure()
                .loggers("slf4j")
                .dataSource("jdbc:sqlite:" + file, "", "")
                .locations("classpath:fettle/book/schema")
                .target("6")
                .load()
                .migrate();
        String content = "time,volts\n0,4\n1,3.9\n";
        String sha256 = TraceFiles.sha256(log("flight.csv", content));
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(packed)) {
            gzip.write(content.getBytes());
        }
        byte[] bytes = packed.toByteArray();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            insert(connection, "INSERT INTO trace_file VALUES (?, ?)", sha256, content.length());
            String piece = "INSERT INTO trace_file_part VALUES (?, ?, ?)";
            insert(connection, piece, sha256, 1, base64(bytes, 0, 10));
            insert(connection, piece, sha256, 2, base64(bytes, 10, bytes.length));
        }
        Path old = Files.copy(file, folder.resolve("old-backup.sqlite"));
        try (Book book = Book.open(home())) {
            assertThat(text(book, sha256)).isEqualTo(content);
            assertThat(Verification.of(book)).isEmpty();
        }
        Restore.put(old, folder.resolve("new"), NOON);
        try (Book book = Book.open(folder.resolve("new"))) {
            assertThat(text(book, sha256)).isEqualTo(content);
        }
    }

    private static String base64(byte[] bytes, int from, int to) {
        return Base64.getEncoder().encodeToString(Arrays.copyOfRange(bytes, from, to));
    }

    private static void insert(Connection connection, String sql, Object... values) throws Exception {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            for (int i = 0; i < values.length; i++) {
                statement.setObject(i + 1, values[i]);
            }
            statement.executeUpdate();
        }
    }
}
