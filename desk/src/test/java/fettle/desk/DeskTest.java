package fettle.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.SocketException;
import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class DeskTest {
    @TempDir
    Path folder;

    private OpenDesk desk;

    @BeforeEach
    void open() {
        desk = OpenDesk.empty(folder);
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void saysInOneLineThatThePortIsTaken() {
        int port = URI.create(desk.url("/")).getPort();
        DeskOptions options = DeskOptions.onLoopback(port, Clock.systemUTC(), null);

        assertThatThrownBy(() -> Desk.start(desk.workshop(), options))
                .isInstanceOf(PortTakenException.class)
                .hasMessage("the desk cannot listen on 127.0.0.1 port " + port
                        + ": another program has it, or it is not allowed. Close that program or choose another port.");
    }

    @Test
    void listensOnTheLoopbackAlone() throws SocketException {
        int port = URI.create(desk.url("/")).getPort();
        List<InetAddress> others = NetworkInterface.networkInterfaces()
                .flatMap(NetworkInterface::inetAddresses)
                .filter(address -> !address.isLoopbackAddress())
                .toList();
        assumeThat(others).as("addresses of this machine besides the loopback").isNotEmpty();

        for (InetAddress address : others) {
            assertThatThrownBy(() -> new Socket(address, port).close())
                    .as("connecting to %s", address)
                    .isInstanceOf(IOException.class);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"/nowhere", "/kit/packs/P99", "/kit/edit/craft?name=None"})
    void answersUnknownPlacesWithAPageThatSaysSo(String path) {
        HttpResponse<String> answer = desk.get(path);

        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.body()).contains("<h1>Not found</h1>").doesNotContain("Exception");
    }

    @Test
    void answersAnUnexpectedFaultWithAPlainPage() {
        desk.workshop().close();

        HttpResponse<String> answer = desk.get("/kit");

        assertThat(answer.statusCode()).isGreaterThanOrEqualTo(400);
        assertThat(answer.body()).doesNotContain("Exception").doesNotContain("\tat ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/kit", "/kit/rules", "/kit/add/packs", "/journal", "/nowhere"})
    void defersToMakerClubAndCodesOnEveryPage(String path) {
        assertThat(desk.get(path).body())
                .contains("Fettle reports which checks a pack passed. The maker's instructions, your club's rules and"
                        + " local codes come first.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/kit", "/journal"})
    void isLight(String path) {
        int page = desk.get(path).body().length();
        int assets = desk.get("/assets/desk.css").body().length()
                + desk.get("/assets/desk.js").body().length()
                + desk.get("/assets/htmx.js").body().length();

        assertThat(page + assets).isLessThan(150_000);
    }

    @Test
    void refusesANumberThatIsNone() {
        assertThat(desk.get("/journal?from=x").statusCode()).isEqualTo(400);
    }
}
