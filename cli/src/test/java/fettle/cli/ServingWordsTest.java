package fettle.cli;

import static fettle.cli.ShellAssert.done;
import static fettle.cli.ShellAssert.refused;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class ServingWordsTest {
    @TempDir
    private Path home;

    @Test
    void demoFindsTheFaultsOfItsShelfAndServesThem() throws IOException {
        String port = String.valueOf(freePort());
        AtomicBoolean served = new AtomicBoolean();
        Shell shell = new Shell(home)
                .whileServing(
                        () -> served.set(get("http://127.0.0.1:" + port + "/").contains("P05")));

        var shown = shell.run("demo", "--port", port);

        done(shown);
        assertThat(shown.out())
                .contains(
                        "cell 3 falls behind",
                        "kept full for 19 d",
                        "below the minimum",
                        "noted swollen",
                        "never been checked",
                        "does not settle");
        assertThat(shown.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(Wrapped.COLUMNS));
        assertThat(shown.err()).contains("http://127.0.0.1:" + port + "/");
        assertThat(served).isTrue();
    }

    @Test
    void demoIsThrownAwayUnlessAFolderIsNamed() {
        Shell shell = new Shell(home);
        var shown = shell.run("demo", "--no-serve");
        done(shown);
        String folder = shown.err().lines().findFirst().orElseThrow().replaceAll(".* in (.+) …", "$1");

        assertThat(Path.of(folder)).isAbsolute().doesNotExist();

        String kept = home.resolve("kept").toString();
        done(shell.run("demo", "--no-serve", "--book", kept));
        assertThat(shell.run("today", "--book", kept).out()).contains("P05");
        refused(shell.run("demo", "--no-serve", "--book", kept), "already a book");
    }

    @Test
    void openServesTheUsersOwnBookAndKeepsOthersOut() throws IOException {
        String port = String.valueOf(freePort());
        AtomicBoolean served = new AtomicBoolean();
        Shell shell = new Shell(home).whileServing(() -> {
            served.set(get("http://127.0.0.1:" + port + "/").contains("<html"));
            refused(new Shell(home).line("today"), "in use");
        });

        done(shell.run("open", "--port", port));

        assertThat(served).isTrue();
        assertThat(home.resolve("fettle")).isDirectory();
    }

    @Test
    void openSaysThatAPortIsTaken() throws IOException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
            String port = String.valueOf(taken.getLocalPort());

            refused(new Shell(home).run("open", "--port", port), port, "port");
        }
    }

    @Test
    void openRefusesAnAddressOfAnotherMachine() {
        // 192.0.2.0/24 is kept for documentation: no machine has it (RFC 5737)
        refused(new Shell(home).line("open --port 0 --host 192.0.2.7"), "192.0.2.7", "no address of this machine");
        refused(new Shell(home).line("open --port 0 --host nowhere.invalid"), "nowhere.invalid");
    }

    @Test
    void openTellsAProgramWhereTheDeskIs() {
        assertThat(new Shell(home).line("open --port 0 --json").out())
                .startsWith("{\"url\":\"http://127.0.0.1:")
                .hasLineCount(1);
    }

    @Test
    void openRefusesAPortThatCannotBe() {
        refused(new Shell(home).run("open", "--port", "70000"), "70000", "65535");
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
            return socket.getLocalPort();
        }
    }

    private static String get(String address) {
        try {
            return HttpClient.newHttpClient()
                    .send(HttpRequest.newBuilder(URI.create(address)).build(), HttpResponse.BodyHandlers.ofString())
                    .body();
        } catch (IOException fault) {
            throw new IllegalStateException(fault);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(interrupted);
        }
    }
}
