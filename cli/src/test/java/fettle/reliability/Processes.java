package fettle.reliability;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Starts processes with the classes of the tests. */
final class Processes {
    private static final int PATIENCE_MINUTES = 5;

    private Processes() {}

    static List<String> scribe(String... arguments) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                Scribe.class.getName()));
        command.addAll(List.of(arguments));
        return command;
    }

    /** What a process said, once it has ended. */
    static String said(ProcessBuilder builder) throws IOException, InterruptedException {
        Process process = builder.redirectErrorStream(true).start();
        try (var out = process.getInputStream()) {
            return new String(out.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException cut) {
            throw new UncheckedIOException(cut);
        } finally {
            if (!process.waitFor(PATIENCE_MINUTES, TimeUnit.MINUTES)) {
                process.destroyForcibly();
            }
        }
    }
}
