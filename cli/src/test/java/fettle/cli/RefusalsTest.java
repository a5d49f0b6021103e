package fettle.cli;

import static fettle.cli.ShellAssert.done;
import static fettle.cli.ShellAssert.refused;
import static fettle.cli.ShellAssert.refusedForEach;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What cannot be is refused in one line, and the book stays as it was. */
final class RefusalsTest {
    @TempDir
    private Path home;

    private Shell shell;
    private String before = "";

    @BeforeEach
    void open() {
        shell = new Shell(home);
        done(shell.line("pack add P07 --chemistry LiPo --cells 8S --capacity 5000 --identity confirmed"));
        before = shell.line("journal").out();
    }

    private void nothingIsLost() {
        assertThat(shell.line("journal").out()).isEqualTo(before);
        assertThat(shell.line("book verify").out()).contains("whole");
    }

    @Test
    void negativeVolts() {
        refused(shell.line("check P07 -3.84 3.84 3.84 3.84 3.84 3.84 3.84 3.84"), "-3.84");
        nothingIsLost();
    }

    @Test
    void voltsNoCellHas() {
        refused(shell.line("check P07 38.4 3.84 3.84 3.84 3.84 3.84 3.84 3.84"), "38.4", "cell 1");
        nothingIsLost();
    }

    @Test
    void nineReadingsOfEightCells() {
        refused(shell.line("check P07 3.8 3.8 3.8 3.8 3.8 3.8 3.8 3.8 3.8"), "9", "8");
        nothingIsLost();
    }

    @Test
    void lettersForReadings() {
        refusedForEach(shell.line("check P07 3.8 3.8 abc 3.8 3.8 3.8 3.8 3.8"), "column 13", "abc");
        nothingIsLost();
    }

    @Test
    void emptyWords() {
        refused(shell.run("check", ""), "pack");
        refusedForEach(shell.run("pack", "add", ""), "tag", "chemistry", "cells", "capacity");
        refused(shell.run("pack", "show", ""), "not in this book");
        nothingIsLost();
    }

    @Test
    void anEmptyFileInPlaceOfTheBook() throws IOException {
        Path folder = Files.createDirectory(home.resolve("other"));
        Files.createFile(folder.resolve("book.sqlite"));

        refused(shell.run("today", "--book", folder.toString()), "book.sqlite", "empty");
        assertThat(folder.resolve("book.sqlite")).isEmptyFile();

        String backup = home.resolve("backup.sqlite").toString();
        done(shell.run("book", "backup", backup));
        done(shell.run("book", "restore", backup, "--book", folder.toString()));
        assertThat(shell.run("pack", "list", "--book", folder.toString()).out()).contains("P07");
    }

    @Test
    void anEmptyFileToImport() throws IOException {
        Path empty = Files.createFile(home.resolve("empty.zip"));
        String fresh = home.resolve("fresh").toString();

        refused(shell.run("book", "import", empty.toString(), "--book", fresh), "empty.zip");
        assertThat(shell.run("journal", "--book", fresh).out()).isBlank();
    }

    @Test
    void anImportIntoABookThatHoldsSomething() {
        String archive = home.resolve("book.zip").toString();
        done(shell.run("book", "export", archive));

        refused(shell.run("book", "import", archive), "empty");
        nothingIsLost();
    }

    @Test
    void aBookOfANewerVersion() throws SQLException {
        Path file = home.resolve("fettle").resolve("book.sqlite");
        String later = "INSERT INTO flyway_schema_history (installed_rank, version, description, type, script,"
                + " installed_by, execution_time, success) VALUES (99, '99', 'later', 'SQL', 'V99__later.sql', '', 0, 1)";
        sql(file, later);

        refused(shell.line("today"), "newer Fettle", "99");

        sql(file, "DELETE FROM flyway_schema_history WHERE version = '99'");
        nothingIsLost();
    }

    private static void sql(Path file, String statement) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement execution = connection.createStatement()) {
            execution.execute(statement);
        }
    }

    @Test
    void aFolderWithoutAName() {
        refused(shell.run("today", "--book", ""), "--book names no folder");
        nothingIsLost();
    }

    @Test
    void aFolderThatIsAFile() throws IOException {
        Path file = Files.writeString(home.resolve("notes"), "mine");

        refused(shell.run("today", "--book", file.toString()), "notes", "is a file");
        refused(shell.run("today", "--book", file.resolve("below").toString()), "cannot be made");
        assertThat(file).hasContent("mine");
    }

    @Test
    void aReadOnlyFolder() {
        // the process table takes no files from anyone, root included
        Path readOnly = Path.of("/proc/self/fdinfo");
        assumeTrue(Files.isDirectory(readOnly), "skipped: no /proc here to stand for a read-only folder");

        refused(shell.run("today", "--book", readOnly.toString()), "read-only");
        refused(shell.run("book", "backup", readOnly.resolve("copy").toString()), "fdinfo", "cannot be written");
        refused(shell.run("book", "export", readOnly.resolve("copy").toString()), "fdinfo", "cannot be written");
        nothingIsLost();
    }
}
