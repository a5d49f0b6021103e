package fettle.cli;

import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;

/** Where the process starts and ends. */
public final class Main {
    private Main() {}

    public static void main(String[] arguments) {
        int code = commandLine(Surroundings.ofProcess())
                .setOut(writer(System.out))
                .setErr(writer(System.err))
                .execute(arguments);
        System.exit(code);
    }

    /** The whole command line, ready to execute. */
    static CommandLine commandLine(Surroundings surroundings) {
        Problems problems = new Problems();
        return new CommandLine(new Fettle(surroundings))
                .setExecutionExceptionHandler(problems)
                .setParameterExceptionHandler(problems);
    }

    // UTF-8 whatever the locale says: the glyphs and units are part of the answer
    private static PrintWriter writer(PrintStream stream) {
        return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
    }
}
