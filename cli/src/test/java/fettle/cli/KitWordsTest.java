package fettle.cli;

import static fettle.cli.ShellAssert.done;
import static fettle.cli.ShellAssert.misused;
import static fettle.cli.ShellAssert.refused;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class KitWordsTest {
    @TempDir
    private Path home;

    private Shell shell;

    @BeforeEach
    void open() {
        shell = new Shell(home);
    }

    private void addP07() {
        done(shell.line("pack add P07 --chemistry LiPo --cells 4S --capacity 5000 --charge-rating 5C"));
    }

    @Test
    void addsAPackAndListsIt() {
        addP07();

        assertThat(shell.line("pack list").out()).contains("P07", "LiPo 4S 5000 mAh");
    }

    @Test
    void refusesAPackWithEveryFaultAtOnce() {
        var result = shell.line("pack add P07 --chemistry coal --cells 0S --capacity much");

        assertThat(result.code()).isEqualTo(ExitCode.CANNOT);
        assertThat(result.err())
                .contains("coal", "cells in series are 0", "much")
                .doesNotContain("Exception", "\tat ");
        assertThat(shell.line("pack list").out()).isBlank();
    }

    @Test
    void editsWhatIsGivenAndKeepsTheRest() {
        addP07();

        done(shell.line("pack edit P07 --mass 540g --rename P17"));

        assertThat(shell.line("pack list --json").out())
                .contains("\"P17\"", "\"massKilograms\":0.54", "\"chargeRatingAmps\":25.0");
    }

    @Test
    void refusesToEditWhatIsNotThere() {
        addP07();

        refused(shell.line("pack edit P08 --mass 540g"), "P08", "P07");
    }

    @Test
    void retiresAndRestoresAPack() {
        addP07();

        done(shell.line("pack retire P07 --reason sold"));
        assertThat(shell.line("pack list").out()).isBlank();
        assertThat(shell.line("pack list --all").out()).contains("P07", "retired");
        done(shell.line("pack restore P07"));
        assertThat(shell.line("pack list").out()).contains("P07").doesNotContain("retired");
    }

    @Test
    void refusesToRetireOrRestoreWhatIsNotThere() {
        refused(shell.line("pack retire P07"), "P07");
        refused(shell.line("pack restore P07"), "P07");
    }

    @Test
    void showsAPackThatWasNeverChecked() {
        addP07();

        var shown = shell.line("pack show P07 --working");

        done(shown);
        assertThat(shown.out()).contains("unproven", "never been checked");
    }

    @Test
    void refusesToShowAnUnknownPack() {
        refused(shell.line("pack show P07"), "P07");
    }

    @Test
    void keepsCraft() {
        done(shell.line("craft add Harrier --kind plane --cells 4S --typical-current 32A"));

        assertThat(shell.line("craft list").out()).contains("Harrier", "plane 4S");
        assertThat(shell.line("craft show harrier").out()).contains("typical current   32");
    }

    @Test
    void refusesACraftOfAnUnknownKind() {
        refused(shell.line("craft add Harrier --kind kite"), "kite", "plane");
    }

    @Test
    void keepsSourcesAndChargers() {
        done(shell.run("source", "add", "clubhouse", "--kind", "mains supply", "--power", "700W"));
        done(shell.run(
                "charger",
                "add",
                "bench-pair",
                "--chemistries",
                "LiPo, NiMH",
                "--source",
                "clubhouse",
                "--total-power",
                "600W",
                "--ports",
                "20A 400W 8S bleed 1A; 10A 200W 6S discharge 25W"));

        assertThat(shell.line("source show clubhouse").out()).contains("mains supply", "700");
        assertThat(shell.line("charger list").out()).contains("20 A 400 W 8S; 10 A 200 W 6S", "LiPo, NiMH");
        assertThat(shell.line("charger show bench-pair").out()).contains("clubhouse", "600");
    }

    @Test
    void refusesASourceWithoutPower() {
        refused(shell.run("source", "add", "clubhouse", "--kind", "mains supply", "--power", "lots"), "lots");
    }

    @Test
    void refusesAChargerWhosePortsAreNotUnderstood() {
        refused(shell.run("charger", "add", "bench", "--chemistries", "LiPo", "--ports", "twenty amps"), "twenty");
    }

    @Test
    void saysWhatAGroupOfWordsCanDo() {
        misused(shell.line("pack"), "list|show|add|edit|retire|restore|label|passport");
    }

    @Test
    void saysWhichOptionIsUnknown() {
        misused(shell.line("pack add P07 --colour red"), "--colour");
    }
}
