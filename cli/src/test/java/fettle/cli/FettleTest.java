package fettle.cli;

import static fettle.cli.ShellAssert.done;
import static fettle.cli.ShellAssert.misused;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
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

        assertThat(command.getSubcommands().keySet())
                .contains(
                        "book", "charged", "charger", "check", "checks", "craft", "demo", "journal", "open", "pack",
                        "ran", "rule", "servo", "setup", "source", "sweep", "today", "trace", "undo", "work");
    }

    @Test
    void everyWordHelpsAndKnowsJson() {
        helpsAndKnowsJson(Main.commandLine(surroundings(home, Map.of())));
    }

    @Test
    void everyWordShowsAnExampleThatIsUnderstood() {
        List<CommandLine> words =
                leaves(Main.commandLine(surroundings(home, Map.of()))).toList();

        assertThat(words).hasSizeGreaterThan(30);
        assertThat(words).allSatisfy(word -> {
            String name = word.getCommandSpec().qualifiedName();
            List<String> examples = Stream.of(
                            word.getCommandSpec().usageMessage().footer())
                    .filter(line -> line.startsWith("  fettle "))
                    .toList();
            assertThat(examples).as(name).isNotEmpty();
            assertThat(examples).allSatisfy(example -> {
                assertThat(example).startsWith("  " + name);
                List<String> arguments = Shell.split(example.strip());
                Main.commandLine(surroundings(home, Map.of()))
                        .parseArgs(arguments.subList(1, arguments.size()).toArray(String[]::new));
            });
        });
    }

    @Test
    void everyGroupSaysWhereToReadMore() {
        for (String group : List.of("pack", "craft", "charger", "source", "rule", "book", "trace", "work")) {
            assertThat(new Shell(home).line(group + " --help").out())
                    .contains("Each word says more, with an example: fettle " + group + " ");
        }
    }

    private static Stream<CommandLine> leaves(CommandLine command) {
        return command.getSubcommands().isEmpty()
                ? Stream.of(command)
                : command.getSubcommands().values().stream().flatMap(FettleTest::leaves);
    }

    @Test
    void helpIsShortAndFitsThePage() {
        var help = new Shell(home).line("pack add --help");

        done(help);
        assertThat(help.out())
                .startsWith("Usage: fettle pack add [OPTIONS] NAME")
                .contains("--charge-rating=CURRENT");
        assertThat(help.out().lines())
                .hasSizeLessThan(30)
                .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(Wrapped.COLUMNS));
    }

    private static void helpsAndKnowsJson(CommandLine command) {
        command.getSubcommands().values().forEach(FettleTest::helpsAndKnowsJson);
        var spec = command.getCommandSpec();
        assertThat(spec.findOption("--help")).as(spec.qualifiedName()).isNotNull();
        assertThat(spec.usageMessage().description()).as(spec.qualifiedName()).isNotEmpty();
        if (command.getSubcommands().isEmpty()) {
            assertThat(spec.findOption("--json")).as(spec.qualifiedName()).isNotNull();
            boolean needsABook = !spec.qualifiedName().startsWith("fettle work ");
            assertThat(spec.findOption("--book") != null)
                    .as(spec.qualifiedName())
                    .isEqualTo(needsABook);
        }
    }

    @Test
    void saysWhatIsWrongWithAnUnknownWord() {
        misused(new Shell(home).line("todya"), "there is no word \"todya\"", "Did you mean fettle today?");
        misused(new Shell(home).line("pack ad P07"), "there is no word \"ad\"", "fettle pack add");
        misused(new Shell(home).run(), "say what to do");
    }

    @Test
    void saysWhatIsWrongWithAnOption() {
        misused(new Shell(home).line("today --jsn"), "there is no option --jsn", "Did you mean --json?");
        misused(new Shell(home).line("pack add P07 --chemsitry LiPo"), "--chemsitry", "--chemistry");
        misused(new Shell(home).line("check P07 3.84 --preveiw"), "--preveiw", "--preview");
        misused(new Shell(home).line("rule set LiPo storage-time 96h --reson cold"), "--reson", "--reason");
        misused(new Shell(home).line("today --book"), "DIR after --book is missing");
        misused(new Shell(home).line("journal --limit many"), "--limit", "\"many\" is not a whole number");
        misused(new Shell(home).line("pack retire P07 sold"), "\"sold\" is more than fettle pack retire takes");
    }

    @Test
    void refusesInJsonWhereJsonIsAskedFor() {
        assertThat(new Shell(home).line("pack show P07 --json").err())
                .isEqualToIgnoringNewLines(
                        "{\"faults\":[{\"field\":\"name\",\"sentence\":\"P07 is not in this book, which has"
                                + " no pack yet. Add it first.\"}]}");
        assertThat(new Shell(home).line("pack add P07 --json --cells 0S").err())
                .startsWith("{\"faults\":[")
                .contains("\"field\":\"chemistry\"", "\"field\":\"cells\"");
        assertThat(new Shell(home).line("today --json --all").err())
                .startsWith("{\"faults\":[")
                .contains("--all");
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
