package fettle.reliability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A disk that fills up, a folder that turns read-only and a second process, each while entries are made. */
final class FailingFolderTest {
    @TempDir
    private Path folder;

    @Test
    void aDiskThatFillsUpLosesNothingAcknowledged() throws IOException, InterruptedException {
        List<String> said = inOwnMount(
                "mount -t tmpfs -o size=3m fettle \"$1\" || exit 99",
                "dd if=/dev/zero of=\"$1/filler\" bs=1k count=500 status=none",
                scribe("write", "$1/book", "$2") + " > \"$2/acknowledged\" 2> \"$2/refusal\"",
                "rm \"$1/filler\"",
                scribe("read", "$1/book"));

        requireRefusal("(disk is full|disk full)");
        requireAllHeld(said, 20);
    }

    @Test
    void aFolderThatTurnsReadOnlyLosesNothingAcknowledged() throws IOException, InterruptedException {
        List<String> said = inOwnMount(
                "mount -t tmpfs fettle \"$1\" || exit 99",
                scribe("visit", "$1/book", "$2") + " > \"$2/acknowledged\" 2> \"$2/refusal\" &",
                "until [ \"$(wc -l < \"$2/acknowledged\")\" -ge 8 ]; do sleep 0.05; done",
                // refused while the book is open for writing, so it is asked again
                "until mount -o remount,ro \"$1\" 2> /dev/null; do :; done",
                "wait",
                "mount -o remount,rw \"$1\"",
                scribe("read", "$1/book"));

        requireRefusal("read-only");
        requireAllHeld(said, 8);
    }

    @Test
    void ofTwoProcessesOneWritesAndTheOtherIsToldWhich() throws IOException, InterruptedException {
        Path book = folder.resolve("book");
        Process first = start(book);
        Process second = start(book);
        BufferedReader winner = first.inputReader();
        BufferedReader other = second.inputReader();
        boolean firstWrites = winner.readLine() != null;
        Process writer = firstWrites ? first : second;
        Process refused = firstWrites ? second : first;
        assertThat(refused.errorReader().readLine())
                .startsWith("refused: ")
                .containsPattern("in use by process (" + writer.pid() + "|unknown)")
                .doesNotContain("Exception");
        assertThat(refused.waitFor()).isEqualTo(1);
        String acknowledged = (firstWrites ? winner : other).readLine();
        writer.toHandle().destroyForcibly();
        writer.waitFor();
        assertThat(Processes.said(new ProcessBuilder(Processes.scribe("read", book.toString())))
                        .lines())
                .startsWith("whole")
                .contains(acknowledged);
    }

    private Process start(Path book) throws IOException {
        return new ProcessBuilder(Processes.scribe("write", book.toString(), folder.toString())).start();
    }

    private void requireRefusal(String why) throws IOException {
        List<String> refusal = Files.readAllLines(folder.resolve("refusal"));
        assertThat(refusal).hasSize(1);
        assertThat(refusal.get(0)).startsWith("refused: ").containsPattern(why).doesNotContain("Exception");
    }

    private void requireAllHeld(List<String> said, int atLeast) throws IOException {
        List<String> acknowledged = Files.readAllLines(folder.resolve("acknowledged"));
        assertThat(acknowledged).hasSizeGreaterThan(atLeast);
        assertThat(said).startsWith("whole").containsAll(acknowledged);
    }

    private static String scribe(String... arguments) {
        return Stream.concat(
                        Processes.scribe().stream().map(word -> "'" + word + "'"),
                        Stream.of(arguments).map(word -> "\"" + word + "\""))
                .reduce((before, word) -> before + " " + word)
                .orElseThrow();
    }

    /** Runs a script where it may mount what nobody else sees; skips, and says so, where the system forbids that. */
    private List<String> inOwnMount(String... script) throws IOException, InterruptedException {
        Path disk = Files.createDirectory(folder.resolve("disk"));
        List<String> own = List.of("unshare", "--map-root-user", "--mount");
        assumeTrue(
                Processes.said(new ProcessBuilder(Stream.concat(
                                        own.stream(), Stream.of("mount", "-t", "tmpfs", "fettle", disk.toString()))
                                .toList()))
                        .isEmpty(),
                "skipped: this system lets tests mount nothing (unshare --map-root-user --mount)");
        List<String> command = Stream.concat(
                        own.stream(),
                        Stream.of(
                                "bash", "-c", String.join("\n", script), "script", disk.toString(), folder.toString()))
                .toList();
        return Processes.said(new ProcessBuilder(command)).lines().toList();
    }
}
