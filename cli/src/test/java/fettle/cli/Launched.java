package fettle.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Fettle in a process of its own: the tests' classes, no build. */
final class Launched {
    private static final int PATIENCE_MINUTES = 2;

    private Launched() {}

    /** The command that starts Fettle with these arguments. */
    static List<String> command(String... arguments) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
        command.addAll(List.of(arguments));
        return command;
    }

    static Process start(List<String> command) throws IOException {
        return new ProcessBuilder(command).start();
    }

    /** What a process leaves behind, once it has ended. */
    static Shell.Result end(Process process) throws InterruptedException {
        process.onExit(); // so that what it says is kept
        String out = text(process, 1);
        String err = text(process, 2);
        if (!process.waitFor(PATIENCE_MINUTES, TimeUnit.MINUTES)) {
            process.destroyForcibly();
        }
        return new Shell.Result(process.exitValue(), out, err);
    }

    private static String text(Process process, int stream) {
        try (var input = stream == 1 ? process.getInputStream() : process.getErrorStream()) {
            return new String(input.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
