package fettle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** Runs every example of {@code docs/command-line.md}, in order, on one book. */
final class CommandLineDocTest {
    private static final Path DOCUMENT = Path.of("..", "docs", "command-line.md");
    private static final Pattern BLOCK = Pattern.compile("```console\\n(.*?)```", Pattern.DOTALL);
    private static final String PROMPT = "$ ";
    private static final String LEFT_OUT = "…";

    @TempDir
    private Path home;

    /** A command as written, and what the document says it prints. */
    private record Example(String command, List<String> printed) {}

    @Test
    void everyExamplePrintsWhatItSays() throws IOException {
        writeLogs();
        Shell shell = new Shell(home);
        for (Example example : examples()) {
            List<String> words = Shell.split(example.command().replace("~", home.toString()));
            Shell.Result result = shell.run(words.subList(1, words.size()).toArray(String[]::new));
            String printed = (result.err() + result.out()).replace(home.toString(), "~");

            assertThat(printed).as(example.command()).matches(pattern(example.printed()));
            assertThat(result.code() != ExitCode.DONE)
                    .as("%s is refused: %s", example.command(), printed)
                    .isEqualTo(isRefusal(example.printed()));
        }
    }

    /** The logs the examples read: a run at 20 A for a minute, registers at rest, and a servo that binds from 1850 µs on. */
    private void writeLogs() throws IOException {
        String flight = IntStream.range(0, 180)
                .mapToObj(second -> second + (second >= 60 && second < 120 ? ",14.8,20" : ",16.4,0"))
                .collect(Collectors.joining("\n", "time [s],voltage [V],current [A]\n", "\n"));
        Files.writeString(home.resolve("flight.csv"), flight);
        String sagging = flight.replace("118,14.8", "118,11.6").replace("119,14.8", "119,11.6");
        Files.writeString(home.resolve("sagging.csv"), sagging);
        Files.writeString(
                home.resolve("shelf.tsv"),
                "tag\tcell 1\tcell 2\tcell 3\tcell 4\ttemperature\trest h\nP07\t3,84\t3,83\t3,85\t3,84\t21\t2\n");
        Files.writeString(home.resolve("registers.csv"), "Voltage,0x3138\nCurrent,0xFFFF\n");
        String sweep = IntStream.rangeClosed(100, 200)
                .map(step -> 10 * step)
                .mapToObj(pulse -> pulse + "," + (200 + pulse % 20 / 10 + 6 * Math.max(0, pulse - 1850)))
                .collect(Collectors.joining("\n", "pulse_us,current_mA\n", "\n"));
        Files.writeString(home.resolve("aileron.csv"), sweep);
    }

    @Test
    void everyWordHasAnExample() throws IOException {
        List<String> commands = examples().stream().map(Example::command).toList();
        CommandLine root = Main.commandLine(new Surroundings(Clock.systemUTC(), Map.of(), home, "Robin", () -> {}));

        List<String> words = leaves(root)
                .map(word -> word.getCommandSpec().qualifiedName())
                .filter(name -> !name.startsWith("fettle work "))
                .toList();
        assertThat(words).hasSizeGreaterThan(30);
        assertThat(words.stream()
                        .filter(name -> commands.stream().noneMatch(command -> (command + " ").startsWith(name + " "))))
                .as("words without an example in %s", DOCUMENT)
                .isEmpty();
    }

    private static Stream<CommandLine> leaves(CommandLine command) {
        return command.getSubcommands().isEmpty()
                ? Stream.of(command)
                : command.getSubcommands().values().stream().flatMap(CommandLineDocTest::leaves);
    }

    private static boolean isRefusal(List<String> printed) {
        return printed.stream().anyMatch(line -> line.startsWith("fettle: ") || line.startsWith("{\"faults\":"));
    }

    private static List<Example> examples() throws IOException {
        List<Example> examples = new ArrayList<>();
        for (var block : BLOCK.matcher(Files.readString(DOCUMENT)).results().toList()) {
            for (String line : block.group(1).split("\n")) {
                if (line.startsWith(PROMPT)) {
                    examples.add(new Example(line.substring(PROMPT.length()), new ArrayList<>()));
                } else {
                    examples.get(examples.size() - 1).printed().add(line);
                }
            }
        }
        return examples;
    }

    /** Lines as they are; an ellipsis is any text, alone on a line any lines. */
    private static Pattern pattern(List<String> lines) {
        String all = lines.stream()
                .map(line -> line.equals(LEFT_OUT)
                        ? "(?:.*\n)*?"
                        : Stream.of(line.split(LEFT_OUT, -1))
                                        .map(Pattern::quote)
                                        .collect(Collectors.joining("[^\n]*"))
                                + "\n")
                .collect(Collectors.joining());
        return Pattern.compile(all);
    }
}
