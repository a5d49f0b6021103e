package fettle.book.archive;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.book.BookFixtures;
import fettle.book.GeneratedBook;
import fettle.book.store.Book;
import fettle.book.store.UnusableBookException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VerificationTest {
    private static final int FLIPS = 60;

    @TempDir
    Path folder;

    @Test
    void findsNothingInAWholeBook() {
        try (Book book = Book.open(folder)) {
            GeneratedBook.fill(book, 21);
            assertThat(Verification.of(book)).isEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            UPDATE pack SET rated_capacity_coulombs = -5                   | pack row 1 cannot be read: capacity is
            UPDATE pack SET chemistry = 'COAL'                             | pack row 1 cannot be read: chemistry is "COAL"
            UPDATE pack SET bought_on = 'yesterday'                        | pack row 1 cannot be read: bought_on is
            UPDATE pack_check SET taken_at_utc = 'noon'                    | pack_check row 1 cannot be read: taken_at_utc
            UPDATE pack_check_cell SET rest_volts = 3.9 WHERE position = 2 | pack_check row 1 is not as the journal says
            UPDATE pack_charge SET withdrawn = 1                           | pack_charge row 1 is not as the journal says
            DELETE FROM pack_run                                           | pack_run row 1 is missing
            DELETE FROM journal WHERE id = 6                               | the journal goes from #5 to #7
            UPDATE journal SET sentence = 'never' WHERE id = 3             | journal #3 is not as it was written
            UPDATE journal SET after_json = '{' WHERE id = 4               | journal #4 cannot be read
            UPDATE journal SET item_kind = 'spanner' WHERE id = 4          | journal #4 cannot be read: item_kind
            UPDATE journal SET at_utc = 'noon' WHERE id = 4                | journal #4 cannot be read: at_utc
            """)
    void findsARowThatWasChangedBehindTheJournalsBack(String sql, String fault) {
        try (Book book = Book.open(folder)) {
            BookFixtures.fill(book);
            book.inTransaction(handle -> handle.execute(sql));
            assertThat(Verification.of(book))
                    .anySatisfy(found -> assertThat(found).contains(fault));
        }
    }

    @Test
    void findsAReferenceToNothing() {
        try (Book book = Book.open(folder)) {
            BookFixtures.fill(book);
            book.outsideTransaction(connection -> {
                try (var statement = connection.createStatement()) {
                    statement.execute("PRAGMA foreign_keys = OFF");
                    return statement.execute("UPDATE pack_run SET craft_id = 99");
                } catch (SQLException impossible) {
                    throw new IllegalStateException(impossible);
                }
            });
            assertThat(Verification.of(book)).anyMatch(fault -> fault.contains("refers to a craft that is not there"));
        }
    }

    @Test
    void findsAFlippedLetterOfAnEntry() throws IOException {
        fill();
        byte[] bytes = Files.readAllBytes(file());
        int at = new String(bytes, StandardCharsets.ISO_8859_1).indexOf("P07 3.84 3.83 3.85 3.84");
        assertThat(at).isPositive();
        bytes[at + 4] ^= 1;
        Files.write(file(), bytes);
        assertThat(report()).anyMatch(fault -> fault.contains("is not as"));
    }

    /** Some flips land where nothing is written; the others are told, and none breaks the telling. */
    @Test
    void tellsOfFlippedBytesAnywhereWithoutEverBreaking() throws IOException {
        fill();
        byte[] whole = Files.readAllBytes(file());
        Random random = new Random(4_711);
        int told = 0;
        for (int flip = 0; flip < FLIPS; flip++) {
            byte[] bytes = whole.clone();
            for (int many = 0; many < 8; many++) {
                bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
            }
            Files.deleteIfExists(folder.resolve("book.sqlite-wal"));
            Files.deleteIfExists(folder.resolve("book.sqlite-shm"));
            Files.write(file(), bytes);
            List<String> report = report();
            assertThat(report)
                    .allSatisfy(fault -> assertThat(fault).isNotBlank().doesNotContain("\n", "Exception"));
            told += report.isEmpty() ? 0 : 1;
        }
        assertThat(told).isGreaterThan(FLIPS / 4);
    }

    private void fill() {
        try (Book book = Book.open(folder)) {
            BookFixtures.fill(book);
        }
    }

    private Path file() {
        return folder.resolve("book.sqlite");
    }

    /** What a person is told: a refusal to open, or the report. */
    private List<String> report() {
        try (Book book = Book.open(folder)) {
            return Verification.of(book);
        } catch (UnusableBookException refusal) {
            return List.of(String.valueOf(refusal.getMessage()));
        }
    }
}
