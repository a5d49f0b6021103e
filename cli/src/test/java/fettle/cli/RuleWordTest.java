package fettle.cli;

import static fettle.cli.ShellAssert.done;
import static fettle.cli.ShellAssert.misused;
import static fettle.cli.ShellAssert.refused;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class RuleWordTest {
    @TempDir
    private Path home;

    private Shell shell;

    @BeforeEach
    void open() {
        shell = new Shell(home);
    }

    @Test
    void listsRulesWithTheirStatus() {
        assertThat(shell.line("rule list --chemistry lipo").out())
                .contains("lipo.charge-limit", "4.20 V", "lipo.storage-time", "common practice, no source")
                .doesNotContain("nimh");
    }

    @Test
    void makesARuleStricterAndTakesItBack() {
        done(shell.line("rule set lipo storage-time 48h"));
        assertThat(shell.line("rule list --chemistry lipo").out()).contains("48 h");
        done(shell.line("rule reset lipo storage-time"));
        assertThat(shell.line("rule list --chemistry lipo").out()).contains("72 h");
    }

    @Test
    void refusesALooserRuleWithoutAReason() {
        refused(shell.line("rule set lipo storage-time 96h"), "reason");
    }

    @Test
    void neverLetsALipoCellAboveItsLimit() {
        refused(shell.run("rule", "set", "lipo", "charge-limit", "4.25V", "--reason", "more punch"), "4.2");
    }

    @Test
    void saysWhichRulesThereAre() {
        refused(shell.line("rule reset lipo storage-tme"), "storage-tme", "storage-time");
        refused(shell.line("rule list --chemistry coal"), "coal", "LiPo");
        misused(shell.line("rule set lipo storage-time"), "VALUE");
    }
}
