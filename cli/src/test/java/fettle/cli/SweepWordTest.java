package fettle.cli;

import static fettle.cli.ShellAssert.misused;
import static fettle.cli.ShellAssert.refused;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class SweepWordTest {
    @TempDir
    private Path folder;

    private Shell shell;
    private Path file;

    @BeforeEach
    void write() throws IOException {
        shell = new Shell(folder);
        file = folder.resolve("aileron.csv");
        Files.writeString(
                file,
                "pulse_us,current_mA\n"
                        + IntStream.rangeClosed(0, 100)
                                .map(step -> 1000 + 10 * step)
                                .mapToObj(
                                        pulse -> pulse + "," + (200 + pulse % 20 / 10 + 6 * Math.max(0, pulse - 1850)))
                                .collect(Collectors.joining("\n")));
    }

    @Test
    void tellsEndPointsAndCautionsAndKeepsNoBook() throws IOException {
        String out = shell.run("sweep", file.toString(), "--idle", "12 mA", "--working")
                .out();

        assertThat(out)
                .startsWith("End points 1000 µs and 18")
                .contains("binds above", "friction", "caution", "propeller", "a + b·x + c·(x − t)₊");
        try (var files = Files.list(folder)) {
            assertThat(files).containsExactly(file);
        }
    }

    @Test
    void printsJson() {
        assertThat(shell.run("sweep", file.toString(), "--json").out())
                .startsWith("{\"file\":\"aileron.csv\"")
                .contains("\"high\":{\"pulseSeconds\":{\"value\":0.0018", "\"low\":null");
    }

    @Test
    void refusesInWordsWithoutAStackTrace() {
        refused(shell.run("sweep", file.toString(), "--current-unit", "kA"), "expected mA or A");
        refused(shell.run("sweep", file.toString(), "--idle", "12"), "no unit");
        refused(shell.run("sweep", folder.resolve("none.csv").toString()), "not a file");
        misused(shell.run("sweep"), "FILE");
    }
}
