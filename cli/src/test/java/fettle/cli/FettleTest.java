package fettle.cli;

import static fettle.cli.ShellAssert.done;
import static fettle.cli.ShellAssert.misused;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

final class FettleTest {
    @TempDir
    private Path home;

    private static Surroundings surroundings(Path home, Map<String, String> environment) {
        return new Surroundings(Clock.systemUTC(), environment, home, "Robin", () -> {});
    }

    @Test
    void knowsItsWords() {
        CommandLine command = Main.commandLine(surroundings(home, Map.of()));

        assertThat(new TreeSet<>(command.getSubcommands().keySet()))
                .containsExactly(
                        "book", "charged", "charger", "check", "craft", "demo", "journal", "open", "pack", "ran",
                        "rule", "source", "today", "undo");
    }

    @Test
    void everyWordHelpsAndKnowsJson() {
        helpsAndKnowsJson(Main.commandLine(surroundings(home, Map.of())));
    }

    private static void helpsAndKnowsJson(CommandLine command) {
        command.getSubcommands().values().forEach(FettleTest::helpsAndKnowsJson);
        var spec = command.getCommandSpec();
        assertThat(spec.findOption("--help")).as(spec.qualifiedName()).isNotNull();
        assertThat(spec.usageMessage().description()).as(spec.qualifiedName()).isNotEmpty();
        if (command.getSubcommands().isEmpty()) {
            assertThat(spec.findOption("--json")).as(spec.qualifiedName()).isNotNull();
            assertThat(spec.findOption("--book")).as(spec.qualifiedName()).isNotNull();
        }
    }

    @Test
    void saysWhatIsWrongWithAnUnknownWord() {
        misused(new Shell(home).line("todya"), "todya");
        misused(new Shell(home).run(), "no word");
    }

    @Test
    void anEmptyBookSaysHowToBegin() {
        var today = new Shell(home).line("today");

        done(today);
        assertThat(today.out()).contains("No packs yet", "fettle pack add");
        assertThat(new Shell(home).line("today --json").out()).startsWith("{").contains("\"packs\":[]");
    }

    @Test
    void aFaultOfItsOwnHasItsOwnCode() {
        StringWriter err = new StringWriter();
        CommandLine command = Main.commandLine(surroundings(home, Map.of())).setErr(new PrintWriter(err));

        int code = new Problems()
                .handleExecutionException(new IllegalStateException("broken"), command, command.parseArgs());

        assertThat(code).isEqualTo(ExitCode.FAULT);
        assertThat(err.toString()).contains("a fault of Fettle itself").doesNotContain("\tat ");
    }

    @Test
    void findsTheBookWhereTheUserSays() {
        var both = Map.of("FETTLE_BOOK", "/bench/book", "XDG_DATA_HOME", "/data");

        assertThat(surroundings(home, both).bookFolder()).isEqualTo(Path.of("/bench/book"));
        assertThat(surroundings(home, Map.of("XDG_DATA_HOME", "/data")).bookFolder())
                .isEqualTo(Path.of("/data/fettle"));
        assertThat(surroundings(home, Map.of()).bookFolder()).isEqualTo(home.resolve(".local/share/fettle"));
    }
}
