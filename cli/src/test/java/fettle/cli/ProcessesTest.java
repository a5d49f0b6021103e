package fettle.cli;

import static fettle.cli.ShellAssert.done;
import static fettle.cli.ShellAssert.refused;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What only whole processes can show: a book in use, a process told to stop, a full disk, a disk that takes no writes. */
final class ProcessesTest {
    private static final int TERMINATED = 143; // 128 + SIGTERM, as shells report it
    private static final int PATIENCE_SECONDS = 60;

    @TempDir
    private Path home;

    @Test
    void aSecondProcessIsKeptOutAndStoppingClosesTheBook() throws IOException, InterruptedException {
        String book = home.resolve("a book").toString();
        Process serving = Launched.start(Launched.command("open", "--port", "0", "--book", book));
        try {
            BufferedReader progress = serving.errorReader();
            assertThat(progress.readLine()).contains("opening the book", book);
            assertThat(progress.readLine()).contains("the desk is at http://127.0.0.1:");

            refused(new Shell(home).run("today", "--book", book), "in use by process " + serving.pid());

            stop(serving);
        } finally {
            serving.destroyForcibly();
        }
        // SQLite takes its log away when the last connection is closed, not when it is cut off
        assertThat(Path.of(book)).isDirectoryContaining(file -> file.endsWith("book.sqlite"));
        assertThat(Path.of(book)).isDirectoryNotContaining(file -> file.endsWith("book.sqlite-wal"));
        done(new Shell(home).run("book", "verify", "--book", book));
    }

    @Test
    void stoppingThrowsTheDemoAway() throws IOException, InterruptedException {
        Process demo = Launched.start(Launched.command("demo", "--port", "0"));
        try {
            BufferedReader progress = demo.errorReader();
            Path folder = Path.of(progress.readLine().replaceAll(".* in (.+) …", "$1"));
            String line = progress.readLine();
            while (!line.contains("the desk is at")) {
                line = progress.readLine();
            }
            assertThat(folder).isDirectory();

            stop(demo);
            assertThat(folder).doesNotExist();
        } finally {
            demo.destroyForcibly();
        }
    }

    /** Ctrl-C takes the same way out, but a test started in the background of a shell inherits its being ignored. */
    private static void stop(Process process) throws InterruptedException {
        process.destroy();
        assertThat(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS))
                .as("ended within %d s", PATIENCE_SECONDS)
                .isTrue();
        assertThat(process.exitValue()).isEqualTo(TERMINATED);
    }

    @Test
    void aFullDiskLosesNothingThatWasSaved() throws IOException, InterruptedException {
        Path disk = Files.createDirectory(home.resolve("disk"));
        String book = disk.resolve("book").toString();
        String fill = "pack add P07 --chemistry LiPo --cells 4S --capacity 5000 --book";
        List<String> script = new ArrayList<>(List.of(
                "mount -t tmpfs -o size=2m fettle \"$1\" || exit 99",
                fettle(fill, book) + " >&2 || exit 98",
                "dd if=/dev/zero of=\"$1/filler\" bs=1k status=none 2> /dev/null",
                fettle(
                        "pack add P08 --chemistry LiPo --cells 4S --capacity 5000 --note " + "x".repeat(9_000)
                                + " --book",
                        book),
                "echo \"code $?\" >&2",
                "rm \"$1/filler\"",
                fettle("book verify --book", book) + " && " + fettle("pack list --book", book)));
        var result = withOwnMounts(String.join("\n", script), disk);

        assertThat(result.err())
                .containsPattern("fettle: .*disk (is )?full")
                .contains("code 1")
                .doesNotContain("Exception", "\tat ");
        assertThat(result.err().lines().filter(line -> line.startsWith("fettle: ")))
                .hasSize(1);
        assertThat(result.out()).contains("the book is whole", "P07").doesNotContain("P08");
        assertThat(result.code()).isEqualTo(ExitCode.DONE);
    }

    @Test
    void aReadOnlyDiskIsSaidToBeReadOnly() throws IOException, InterruptedException {
        Path disk = Files.createDirectory(home.resolve("disk"));
        String book = disk.resolve("book").toString();
        var result = withOwnMounts(
                String.join(
                        "\n",
                        "mount -t tmpfs fettle \"$1\" || exit 99",
                        fettle("pack add P07 --chemistry LiPo --cells 4S --capacity 5000 --book", book)
                                + " >&2 || exit 98",
                        "mount -o remount,ro \"$1\" || exit 99",
                        fettle("today --book", book)),
                disk);

        refused(new Shell.Result(result.code(), result.out(), lastLine(result.err())), "read-only");
    }

    private static String lastLine(String text) {
        return text.lines().reduce("", (earlier, later) -> later);
    }

    /** A shell command that starts Fettle; its words are parted by spaces, the book's folder may have some. */
    private static String fettle(String words, String book) {
        List<String> command = Launched.command(words.split(" "));
        command.add(book);
        return "'" + String.join("' '", command) + "'";
    }

    /** Runs a script where it may mount what nobody else sees; skips, and says so, where the system forbids that. */
    private static Shell.Result withOwnMounts(String script, Path disk) throws IOException, InterruptedException {
        assumeTrue(ownMounts(), "skipped: this system lets tests mount nothing (unshare --map-root-user --mount)");
        return Launched.end(Launched.start(
                List.of("unshare", "--map-root-user", "--mount", "bash", "-c", script, "script", disk.toString())));
    }

    private static boolean ownMounts() throws InterruptedException {
        try {
            return Launched.end(Launched.start(List.of(
                                    "unshare", "--map-root-user", "--mount", "mount", "-t", "tmpfs", "fettle", "/mnt")))
                            .code()
                    == 0;
        } catch (IOException noSuchCommand) {
            return false;
        }
    }
}
