package fettle.cli;

import static fettle.cli.ShellAssert.misused;
import static fettle.cli.ShellAssert.refused;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class WorksheetWordTest {
    @TempDir
    private Path home;

    private Shell shell;

    @BeforeEach
    void open() {
        shell = new Shell(home);
    }

    @Test
    void worksOutALoadWithItsWorkingAndNeedsNoBook() {
        String out = shell.line("work load --cells 4S --capacity 5000 --charge 95% --resistance 3 --load 40A --working")
                .out();
        assertThat(out).contains("Lasts", "± from", "caution", "→", "published");
        assertThat(home).isEmptyDirectory();
    }

    @Test
    void printsJsonWithSiFigures() {
        assertThat(shell.line("work rating --cells 4S --capacity 5000 --resistance 3 --json")
                        .out())
                .startsWith("{\"verdict\":\"Carries")
                .contains("\"key\":\"amps\"", "\"standardDeviation\":");
    }

    @Test
    void takesALineForEachPackToJoin() {
        assertThat(shell.run(
                                "work",
                                "join",
                                "--cells=4S",
                                "--amps=8",
                                "--packs=P01; 3.84; 5000 mAh; 3 mΩ; 5 A",
                                "--packs=P02; 3.83; 5000 mAh; 3 mΩ; 5 A")
                        .out())
                .startsWith("They may be joined");
    }

    @Test
    void tellsEveryFaultAtOnce() {
        assertThat(shell.line("work charge --cells 99x --capacity 5 --charge 3").err())
                .contains("cells are", "resistance is not stated", "Charge current is not stated");
        refused(
                shell.line("work load --cells 4S --capacity 5000 --charge 3.8 --resistance 3 --load -5A"),
                "load is -5");
        misused(shell.line("work fly"), "fly");
    }

    @Test
    void helpExplainsEveryField() {
        assertThat(shell.line("work charge --help").out())
                .contains("e.g. 40 %,", "Bleed current")
                .doesNotContain("%%");
    }
}
