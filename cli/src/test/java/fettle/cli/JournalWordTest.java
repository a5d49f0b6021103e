package fettle.cli;

import static fettle.cli.ShellAssert.done;
import static fettle.cli.ShellAssert.misused;
import static fettle.cli.ShellAssert.refused;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class JournalWordTest {
    @TempDir
    private Path home;

    private Shell shell;

    @BeforeEach
    void open() {
        shell = new Shell(home);
    }

    @Test
    void tellsWhoChangedWhatNewestFirst() {
        done(shell.line("craft add Harrier --kind plane"));
        done(shell.line("craft add Teal --kind boat"));

        var lines = shell.line("journal").out().lines().toList();

        assertThat(lines).hasSize(2);
        assertThat(lines.get(0)).contains("2026-05-16 07:30", "Robin", "Teal");
        assertThat(lines.get(1)).contains("Harrier");
    }

    @Test
    void undoesByNumberAndTheUndoingToo() {
        done(shell.line("craft add Harrier --kind plane"));

        done(shell.line("undo 1"));
        assertThat(shell.line("craft list").out()).isBlank();
        done(shell.line("undo 2"));
        assertThat(shell.line("craft list").out()).contains("Harrier");
    }

    @Test
    void refusesToUndoWhatIsNotThere() {
        refused(shell.line("undo"), "undo");
        refused(shell.line("undo 9"), "9");
    }

    @Test
    void asksForNumbers() {
        misused(shell.line("undo last"), "last");
        refused(shell.line("journal --limit 0"), "--limit");
    }
}
