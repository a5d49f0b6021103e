package fettle.book.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import fettle.book.BookFixtures;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OpeningTest {
    @TempDir
    Path folder;

    @Test
    void makesFolderAndBookWhereThereAreNone() {
        Path deep = folder.resolve("club shed").resolve("book");
        Book.open(deep).close();
        assertThat(deep.resolve("book.sqlite")).isRegularFile();
    }

    @Test
    void syncsEveryTransactionToTheDiskAndHoldsReferences() {
        try (Book book = Book.open(folder)) {
            assertThat(pragma(book, "journal_mode")).isEqualTo("wal");
            assertThat(pragma(book, "synchronous")).isEqualTo("2"); // FULL (sqlite.org/pragma.html)
            assertThat(pragma(book, "foreign_keys")).isEqualTo("1");
            assertThat(pragma(book, "busy_timeout")).isEqualTo("5000");
        }
    }

    @Test
    void refusesAPathThatIsAFile() throws IOException {
        refuses(Files.writeString(folder.resolve("book"), "mine"), "is a file; a book needs a folder");
        assertThat(folder.resolve("book")).hasContent("mine");
    }

    @Test
    void refusesAFolderThatCannotBeMade() throws IOException {
        Path file = Files.createFile(folder.resolve("file"));
        refuses(file.resolve("under"), "cannot be made");
    }

    @Test
    void refusesAFolderThatCannotBeWritten() {
        // The process table takes no files from anyone, root included.
        Path readOnly = Path.of("/proc/self/fdinfo");
        assumeTrue(Files.isDirectory(readOnly), "no process table here");
        assertThatThrownBy(() -> Book.open(readOnly))
                .isInstanceOf(UnusableBookException.class)
                .hasMessageContaining("read-only");
    }

    @Test
    void refusesASecondUserInThisProcessAndLetsTheFirstGoOn() {
        try (Book book = Book.open(folder)) {
            refuses(folder, "is in use by process " + ProcessHandle.current().pid());
            BookFixtures.fill(book);
        }
        Book.open(folder).close();
    }

    @Test
    void refusesABookOfANewerVersion() throws SQLException {
        Book.open(folder).close();
        sql("INSERT INTO flyway_schema_history (installed_rank, version, description, type, script, installed_by,"
                + " execution_time, success) VALUES (99, '99', 'later', 'SQL', 'V99__later.sql', '', 0, 1)");
        refuses(
                folder,
                "written by a newer Fettle (schema 99; this one knows up to " + SqliteFile.SCHEMA_VERSION + ")");
    }

    @Test
    void refusesADatabaseOfSomethingElse() throws SQLException {
        sql("CREATE TABLE recipe (name TEXT)");
        refuses(folder, "is a database of something else");
    }

    @Test
    void refusesAFileThatIsNoDatabase() throws IOException {
        Files.writeString(folder.resolve("book.sqlite"), "only text ".repeat(200));
        refuses(folder, "is damaged");
    }

    @Test
    void refusesAFileWhoseFirstPageIsDamaged() throws IOException {
        try (Book book = Book.open(folder)) {
            BookFixtures.fill(book);
        }
        byte[] bytes = Files.readAllBytes(folder.resolve("book.sqlite"));
        Arrays.fill(bytes, 100, 1_000, (byte) 0xff);
        Files.write(folder.resolve("book.sqlite"), bytes);
        refuses(folder, "is damaged");
    }

    @Test
    void freesTheFolderAfterARefusal() throws IOException {
        Files.writeString(folder.resolve("book.sqlite"), "only text ".repeat(200));
        refuses(folder, "is damaged");
        Files.delete(folder.resolve("book.sqlite"));
        Book.open(folder).close();
    }

    private static void refuses(Path path, String why) {
        assertThatThrownBy(() -> Book.open(path).close())
                .isInstanceOf(UnusableBookException.class)
                .hasMessageContaining(why)
                .satisfies(refusal -> assertThat(refusal.getMessage()).doesNotContain("\n"));
    }

    private void sql(String sql) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("book.sqlite"));
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    private static String pragma(Book book, String name) {
        return book.inTransaction(handle ->
                handle.createQuery("PRAGMA " + name).mapTo(String.class).one());
    }
}
