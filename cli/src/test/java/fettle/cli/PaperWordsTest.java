package fettle.cli;

import static fettle.cli.ShellAssert.done;
import static fettle.cli.ShellAssert.refused;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class PaperWordsTest {
    private static final byte[] PDF = {'%', 'P', 'D', 'F'};

    @TempDir
    private Path home;

    private Shell shell;

    @BeforeEach
    void addAPack() {
        shell = new Shell(home);
        done(shell.line("pack add P07 --chemistry LiPo --cells 4S --capacity 5000 --identity confirmed"));
    }

    @Test
    void writesLabels() throws IOException {
        Path file = home.resolve("labels.pdf");

        Shell.Result written = shell.line("pack label p07 P07 --sheet a4-70x36 --out " + file);

        done(written);
        assertThat(written.out()).contains("wrote 2 labels on 1 sheet (A4, 3 × 8 labels of 70.0 × 36.0 mm)");
        assertThat(Files.readAllBytes(file)).startsWith(PDF);
    }

    @Test
    void neverWritesOverAFile() throws IOException {
        Path file = home.resolve("labels.pdf");
        Files.writeString(file, "mine");

        refused(shell.line("pack label --out " + file), "is there already");
        refused(shell.line("pack passport P07 --out " + file), "is there already");

        assertThat(Files.readString(file)).isEqualTo("mine");
    }

    @Test
    void refusesAFolderThatIsNotThere() {
        refused(shell.line("pack label --out " + home.resolve("nowhere/labels.pdf")), "cannot be written");
    }

    @Test
    void refusesAGridItDoesNotKnowAndAPlacePastTheSheet() {
        refused(shell.line("pack label --sheet a5"), "a5", "a4-63x38");
        refused(shell.line("pack label --sheet a4-105x74 --start 9"), "start is 9", "1 to 8");
        refused(shell.line("pack label P99"), "P99", "P07");
    }

    @Test
    void writesAPassport() throws IOException {
        Path file = home.resolve("P07.pdf");

        done(shell.line("pack passport P07 --letter --out " + file));

        assertThat(Files.readAllBytes(file)).startsWith(PDF);
    }
}
