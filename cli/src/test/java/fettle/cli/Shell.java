package fettle.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import picocli.CommandLine;

/** Runs the command line in this process against a book in a test's own folder. */
final class Shell {
    static final Instant NOW = Instant.parse("2026-05-16T07:30:00Z");

    private static final Pattern WORD = Pattern.compile("(\"[^\"]*\"|[^\\s\"])+");

    private final Path home;
    private Runnable untilStopped = () -> {};

    Shell(Path home) {
        this.home = home;
    }

    /** What happens while the desk is served, in place of waiting for Ctrl-C. */
    Shell whileServing(Runnable visit) {
        this.untilStopped = visit;
        return this;
    }

    /** What a command left behind. */
    record Result(int code, String out, String err) {}

    Result run(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        CommandLine command = Main.commandLine(new Surroundings(
                        Clock.fixed(NOW, ZoneOffset.UTC),
                        Map.of("XDG_DATA_HOME", home.toString()),
                        home,
                        "Robin",
                        untilStopped))
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err));
        int code = command.execute(arguments);
        return new Result(code, out.toString(), err.toString());
    }

    /** Runs one line, split as a shell splits it. */
    Result line(String line) {
        return run(split(line).toArray(String[]::new));
    }

    /** The words of a line: parted by spaces, those in double quotes kept together. */
    static List<String> split(String line) {
        return WORD.matcher(line)
                .results()
                .map(word -> word.group().replace("\"", ""))
                .toList();
    }
}
