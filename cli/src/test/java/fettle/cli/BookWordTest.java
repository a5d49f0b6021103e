package fettle.cli;

import static fettle.cli.ShellAssert.done;
import static fettle.cli.ShellAssert.misused;
import static fettle.cli.ShellAssert.refused;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class BookWordTest {
    @TempDir
    private Path home;

    private Shell shell;

    @BeforeEach
    void open() {
        shell = new Shell(home);
        done(shell.line("pack add P07 --chemistry LiPo --cells 4S --capacity 5000"));
    }

    @Test
    void verifiesAWholeBook() {
        var verified = shell.line("book verify");

        done(verified);
        assertThat(verified.out()).contains("whole");
    }

    @Test
    void backsUpAndRestores() {
        String backup = home.resolve("copy of the book").toString();
        done(shell.run("book", "backup", backup));
        done(shell.line("pack add P08 --chemistry LiPo --cells 4S --capacity 5000"));

        done(shell.run("book", "restore", backup));

        assertThat(shell.line("pack list").out()).contains("P07").doesNotContain("P08");
    }

    @Test
    void exportsAndImportsIntoAnotherBook() {
        String archive = home.resolve("book.zip").toString();
        String other = home.resolve("other").toString();
        done(shell.run("book", "export", archive));

        done(shell.run("book", "import", archive, "--book", other));

        assertThat(shell.run("pack", "list", "--book", other).out()).contains("P07");
    }

    @Test
    void refusesToRestoreAFileThatIsNoBackup() throws IOException {
        Path empty = Files.createFile(home.resolve("empty"));

        refused(shell.run("book", "restore", empty.toString()), "empty");
        assertThat(shell.line("pack list").out()).contains("P07");
    }

    @Test
    void refusesToImportWhatIsNotThere() {
        String gone = home.resolve("gone.zip").toString();

        refused(shell.run("book", "import", gone, "--book", home.resolve("new").toString()), "gone.zip");
    }

    @Test
    void refusesToBackUpOrExportOverAFile() throws IOException {
        Path there = Files.writeString(home.resolve("there"), "mine");

        refused(shell.run("book", "backup", there.toString()), "there");
        refused(shell.run("book", "export", there.toString()), "there");
        assertThat(there).hasContent("mine");
    }

    @Test
    void asksForAFile() {
        misused(shell.line("book backup"), "FILE");
    }

    @Test
    void refusesAFolderThatIsAFile() throws IOException {
        Path file = Files.createFile(home.resolve("file"));

        refused(shell.run("today", "--book", file.toString()), "file");
        refused(shell.run("book", "verify", "--book", file.toString()), "file");
    }
}
