package fettle.cli;

import static fettle.cli.ShellAssert.done;
import static fettle.cli.ShellAssert.misused;
import static fettle.cli.ShellAssert.refused;
import static fettle.cli.ShellAssert.refusedForEach;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class EntryWordsTest {
    @TempDir
    private Path home;

    private Shell shell;

    @BeforeEach
    void addKit() {
        shell = new Shell(home);
        done(shell.line("pack add P07 --chemistry LiPo --cells 4S --capacity 5000mAh"));
        done(shell.run("craft", "add", "Brook Heron", "--kind", "glider"));
    }

    @Test
    void savesACheckAndSaysHowToUndoIt() {
        Shell.Result saved = shell.line("check P07 3.84 3.83 3.85 3.84 -5C rest 2h");
        done(saved);
        assertThat(saved.out())
                .startsWith("check of P07: 3.840 3.830 3.850 3.840 V, -5 °C")
                .contains("fettle undo");
    }

    @Test
    void marksWhatItDoesNotUnderstandUnderTheLine() {
        Shell.Result bad = shell.line("check P07 3.84 3.83 3.85 -3.84");
        refused(bad, "fettle: column 20: cell 4 is -3.84 V; expected 0 to 5 V.");
        assertThat(bad.err().lines()).startsWith("P07 3.84 3.83 3.85 -3.84", "                   ^^^^^");
    }

    @Test
    void tellsEveryProblemOnALineOfItsOwn() {
        assertThat(shell.line("check P7 15.4V blue").err().lines().filter(line -> line.startsWith("fettle: column")))
                .hasSize(2);
    }

    @Test
    void keepsWordsTogetherThatTheShellKeptTogether() {
        Shell.Result run = shell.run("ran", "P07", "Brook Heron", "7.5min", "left", "30%");
        done(run);
        assertThat(run.out()).startsWith("ran P07 in Brook Heron: 7.5 min, 30 % left");
        assertThat(EntryWords.line(List.of("P07 15.4V", "rest 2h"))).isEqualTo("P07 15.4V rest 2h");
        assertThat(EntryWords.line(List.of("P07", "note", "soft corner", "21C")))
                .isEqualTo("P07 note \"soft corner\" 21C");
    }

    @Test
    void previewsWithoutSaving() {
        assertThat(shell.line("charged P07 3100mAh to 16.8V --preview").out())
                .contains("P07: a charge · put back 3100 mAh · ended at 16.80 V (4.200 V per cell)");
        Shell.Result json = shell.line("charged P07 3.1 --preview --json");
        assertThat(json.code()).isEqualTo(ExitCode.CANNOT);
        assertThat(json.out()).contains("\"problems\"", "\"column\"");
        assertThat(shell.line("journal").out()).doesNotContain("charged P07");
    }

    @Test
    void takesACheckAndUndoesIt() {
        var taken = shell.line("check P07 3.84 3.83 3.85 3.84 21C rest 2h ir 2.1 2.2 2.0 2.4");

        done(taken);
        assertThat(taken.out()).contains("P07");
        assertThat(shell.line("pack show P07").out()).contains("cell  3  3.850 V");
        done(shell.line("undo"));
        assertThat(shell.line("pack show P07").out()).contains("never been checked");
    }

    @Test
    void previewsACheckWithoutSavingIt() {
        var preview = shell.line("check --preview P07 3.84 3.83 3.85 3.84");

        done(preview);
        assertThat(preview.out()).contains("P07", "3.84");
        assertThat(shell.line("pack show P07").out()).contains("never been checked");
    }

    @Test
    void saysWhichPartOfACheckWasNotUnderstood() {
        refusedForEach(shell.line("check P07 3.84 3.83 3.8x5 3.84"), "column 15", "3.8x5");
    }

    @Test
    void refusesNineReadingsOfAFourCellPack() {
        assertThat(shell.line("check P07 3.8 3.8 3.8 3.8 3.8 3.8 3.8 3.8 3.8").code())
                .isEqualTo(ExitCode.CANNOT);
    }

    @Test
    void refusesAnImpossibleVoltage() {
        refused(shell.line("check P07 3.84 3.83 38.5 3.84"), "38.5");
    }

    @Test
    void refusesAnUnknownPack() {
        refused(shell.line("check P70 3.84 3.83 3.85 3.84"), "P70");
    }

    @Test
    void takesACharge() {
        done(shell.line("charged P07 3100mAh to 16.8V"));

        assertThat(shell.line("pack show P07").out()).contains("charges 1");
    }

    @Test
    void refusesAChargeWithoutFigures() {
        refused(shell.line("charged P07 well"), "well");
    }

    @Test
    void refusesARunThatLeftMoreThanAll() {
        refused(shell.line("ran P07 7min left 130%"), "130");
    }

    @Test
    void asksForTheWordsOfAnEntry() {
        misused(shell.line("check"), "WORDS");
        misused(shell.line("charged"), "TAG");
        misused(shell.line("ran P07"), "WORDS");
    }
}
