package fettle.desk.guard;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.desk.OpenDesk;
import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class GuardTest {
    @TempDir
    static Path folder;

    private static OpenDesk desk;

    @BeforeAll
    static void open() {
        desk = OpenDesk.empty(folder);
    }

    @AfterAll
    static void close() {
        desk.close();
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/assets/desk.css", "/api/review", "/nowhere"})
    void refusesAForeignHostName(String path) throws IOException {
        assertThat(answerTo(path, "packs.example")).startsWith("HTTP/1.1 403");
    }

    @ParameterizedTest
    @ValueSource(strings = {"localhost", "127.0.0.1", "[::1]"})
    void answersToTheNamesOfThisMachine(String host) throws IOException {
        assertThat(answerTo("/", host + ":80")).startsWith("HTTP/1.1 200");
    }

    @Test
    void takesNoChangeFromAnotherSite() {
        HttpResponse<String> byOrigin = desk.send(form("/preferences").header("Origin", "https://packs.example"));
        HttpResponse<String> byFetchSite = desk.send(form("/preferences").header("Sec-Fetch-Site", "cross-site"));
        HttpResponse<String> opaque = desk.send(form("/preferences").header("Origin", "null"));

        assertThat(byOrigin.statusCode()).isEqualTo(403);
        assertThat(byFetchSite.statusCode()).isEqualTo(403);
        assertThat(opaque.statusCode()).isEqualTo(403);
        assertThat(byOrigin.headers().firstValue("Set-Cookie")).isEmpty();
    }

    @Test
    void takesChangesOfItsOwnPagesAndOfProgramsWithoutAnOrigin() {
        String own = desk.url("/").replaceFirst("/$", "");

        assertThat(desk.send(form("/preferences").header("Origin", own).header("Sec-Fetch-Site", "same-origin"))
                        .statusCode())
                .isEqualTo(303);
        assertThat(desk.send(form("/preferences")).statusCode()).isEqualTo(303);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/nowhere", "/assets/desk.js"})
    void allowsNoScriptOrStyleButItsOwn(String path) {
        HttpResponse<String> answer = desk.get(path);

        assertThat(answer.headers().firstValue("Content-Security-Policy"))
                .hasValueSatisfying(policy -> assertThat(policy)
                        .contains("default-src 'none'", "script-src 'self'", "style-src 'self'")
                        .doesNotContain("unsafe"));
        assertThat(answer.headers().firstValue("X-Content-Type-Options")).hasValue("nosniff");
        assertThat(answer.headers().firstValue("Server")).isEmpty();
    }

    @Test
    void refusesARequestThatIsTooLarge() {
        assertThat(desk.post("/entry", "line=" + "3".repeat(100_000)).statusCode())
                .isEqualTo(413);
    }

    private static HttpRequest.Builder form(String path) {
        return desk.request(path)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString("theme=SUNLIGHT"));
    }

    // The JDK's client does not let a test choose the Host header.
    private static String answerTo(String path, String host) throws IOException {
        URI uri = URI.create(desk.url("/"));
        try (Socket socket = new Socket(uri.getHost(), uri.getPort())) {
            OutputStream out = socket.getOutputStream();
            String request = "GET " + path + " HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n";
            out.write(request.getBytes(StandardCharsets.US_ASCII));
            out.flush();
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
