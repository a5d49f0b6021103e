package fettle.desk.trace;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.desk.OpenDesk;
import fettle.desk.ShelfFixtures;
import java.net.URLEncoder;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A log given to the desk, looked at, corrected, kept and shown. */
final class TraceDeskTest {
    private static final Pattern TOKEN = Pattern.compile("name=\"token\" value=\"([^\"]+)\"");

    @TempDir
    Path folder;

    private OpenDesk desk;

    @BeforeEach
    void open() {
        desk = OpenDesk.empty(folder);
        desk.workshop().packs().add(ShelfFixtures.lipo(4));
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private static String log() {
        StringBuilder text = new StringBuilder("time_s,volts,X1\n");
        for (int i = 0; i < 180; i++) {
            boolean run = i >= 60 && i < 120;
            text.append(i).append(run ? ",14.4,20\n" : ",15.6,0\n");
        }
        return text.toString();
    }

    private HttpResponse<String> look(String pack, String file, String content) {
        String body = "--edge\r\nContent-Disposition: form-data; name=\"pack\"\r\n\r\n" + pack
                + "\r\n--edge\r\nContent-Disposition: form-data; name=\"file\"; filename=\"" + file
                + "\"\r\nContent-Type: text/csv\r\n\r\n" + content + "\r\n--edge--\r\n";
        return desk.send(desk.request("/traces/look")
                .header("Content-Type", "multipart/form-data; boundary=edge")
                .POST(BodyPublishers.ofString(body, StandardCharsets.ISO_8859_1)));
    }

    private static String token(HttpResponse<String> page) {
        Matcher token = TOKEN.matcher(page.body());
        assertThat(token.find()).as(page.body()).isTrue();
        return token.group(1);
    }

    @Test
    void showsWhatALogWouldBeReadAsAndKeepsItAsCorrected() {
        HttpResponse<String> look = look("P07", "flight.csv", log());
        assertThat(look.statusCode()).isEqualTo(200);
        assertThat(look.body()).contains("separated by commas", "Nothing is kept yet", "X1");
        assertThat(desk.workshop().traces().list()).isEmpty();

        HttpResponse<String> kept = desk.post(
                "/traces",
                "token=" + token(look)
                        + "&pack=P07&use-1=time&unit-1=s&use-2=volts&unit-2=V&use-3=amps&unit-3=A&positive=discharge&note=");
        assertThat(kept.statusCode()).isEqualTo(303);
        assertThat(kept.headers().firstValue("Location").orElse("")).startsWith("/traces/1?done=");

        assertThat(desk.get("/traces/1").body()).contains("333 mAh out", "What the pack did", "uplot.js");
        assertThat(desk.get("/traces").body()).contains("flight.csv", "333 mAh out");
        assertThat(desk.get("/traces/1/lines.json?from=50&to=70").body())
                .startsWith("{\"seconds\":[49.0,50.0,")
                .contains("\"panel\":\"current\"", "\"unit\":\"A\"");
        assertThat(desk.get("/traces/1/open-format.csv").body()).startsWith("Test Time / s,Voltage / V,Current / A");
    }

    private HttpResponse<String> send(String address, String content) {
        return desk.send(desk.request(address)
                .header("Content-Type", "application/octet-stream")
                .POST(BodyPublishers.ofString(content, StandardCharsets.ISO_8859_1)));
    }

    @Test
    void takesALogOverHttpAndTellsOfIt() {
        String said = "&columns=" + URLEncoder.encode("amps=3:A", StandardCharsets.UTF_8);
        assertThat(send("/api/traces/preview?name=flight.csv", log()).body()).contains("\"dialect\":", "\"X1\"");
        assertThat(desk.workshop().traces().list()).isEmpty();
        HttpResponse<String> added = send("/api/traces?pack=P07&name=flight.csv" + said, log());
        assertThat(added.statusCode()).isEqualTo(201);
        assertThat(added.body()).contains("added trace flight.csv of P07: 1 run, 333 mAh out");
        assertThat(desk.get("/api/traces/1").body()).contains("\"fileName\":\"flight.csv\"");
        assertThat(desk.get("/api/traces?pack=P07").body()).startsWith("[{\"id\":1");

        HttpResponse<String> twice = send("/api/traces?pack=P07&name=again.csv" + said, log());
        assertThat(twice.statusCode()).isEqualTo(400);
        assertThat(twice.body()).contains("is in this book already");
        assertThat(send("/api/traces?pack=P07&name=photo.csv", "\u00FF\u00D8\u00FF\u00E0 picture")
                        .body())
                .contains("photo.csv is a JPEG picture");
        assertThat(send("/api/traces?pack=P99&name=a.csv", log()).statusCode()).isEqualTo(404);
        assertThat(send("/api/traces?pack=P07", log()).body()).contains("the log has no name");
        assertThat(desk.get("/api/traces/99").statusCode()).isEqualTo(404);
        assertThat(desk.workshop().traces().list()).hasSize(1);
    }

    @Test
    void notesWhatWasFoundWhereALogShowsSomethingPastALimit() {
        String sagging = log().replace("100,14.4", "100,11.0").replace("101,14.4", "101,11.0");
        send("/api/traces?pack=P07&name=sag.csv&columns=amps%3D3:A", sagging);
        assertThat(desk.get("/traces/1").body()).contains("What was found", "it counts against P07");
        assertThat(desk.get("/kit/packs/P07").body()).contains("trace acknowledge 1", "below its lowest volts");
        HttpResponse<String> nothing = desk.post("/traces/1/acknowledge", "finding=");
        assertThat(nothing.statusCode()).isEqualTo(422);
        assertThat(nothing.body()).contains("say what was found", "finding-fault");
        assertThat(desk.post("/traces/1/acknowledge", "finding=rested+well").statusCode())
                .isEqualTo(303);
        assertThat(desk.get("/traces/1").body()).contains("Looked into: rested well");
        assertThat(desk.get("/kit/packs/P07").body()).doesNotContain("trace acknowledge 1");
    }

    /** Twelve megabytes, {@code faulty} with a word for a number in its last row. */
    private static String longLog(boolean faulty) {
        StringBuilder text = new StringBuilder("time_s,volts,X1\n");
        for (int i = 0; i < 600_000; i++) {
            text.append(i).append(i % 60 < 30 ? ",15.123456,0.0\n" : ",14.123456,20.0\n");
        }
        return text.append(faulty ? "600000,wrong,0\n" : "600000,15.1,0\n").toString();
    }

    private HttpResponse<String> keepLong(HttpResponse<String> look) {
        return desk.post(
                "/traces",
                "token=" + token(look)
                        + "&pack=P07&use-1=time&unit-1=s&use-2=volts&unit-2=V&use-3=amps&unit-3=A&positive=discharge&note=");
    }

    private HttpResponse<String> waitFor(String address) {
        HttpResponse<String> answer = desk.get(address);
        for (int tries = 0; tries < 600 && answer.statusCode() == 200; tries++) {
            try {
                Thread.sleep(100);
            } catch (InterruptedException stopped) {
                throw new AssertionError(stopped);
            }
            answer = desk.get(address);
        }
        return answer;
    }

    @Test
    void readsALongLogBesideThePagesAndCanBeStopped() {
        HttpResponse<String> kept = keepLong(look("P07", "long.csv", longLog(false)));
        assertThat(kept.statusCode()).isEqualTo(303);
        String address = kept.headers().firstValue("Location").orElse("");
        assertThat(address).startsWith("/traces/reading/");
        HttpResponse<String> done = waitFor(address);
        assertThat(done.statusCode()).as(done.body()).isEqualTo(303);
        assertThat(done.headers().firstValue("Location").orElse("")).startsWith("/traces/1?done=");
        assertThat(desk.workshop().traces().find(1).record().samples()).isEqualTo(600_001);

        HttpResponse<String> faulty = keepLong(look("P07", "faulty.csv", longLog(true)));
        HttpResponse<String> refused =
                waitFor(faulty.headers().firstValue("Location").orElse(""));
        assertThat(refused.body()).contains("faulty.csv line 600002, column 2 (volts)");

        String other = keepLong(look("P07", "other.csv", longLog(false) + "\n"))
                .headers()
                .firstValue("Location")
                .orElse("");
        desk.post(other + "/stop", "");
        assertThat(waitFor(other).body()).contains("other.csv", "was stopped; nothing was kept");
        assertThat(desk.get("/traces/reading/nothing").statusCode()).isEqualTo(404);
        assertThat(desk.workshop().traces().list()).hasSize(1);
    }

    @Test
    void keepsTheFormAndSaysWhyALogIsRefused() {
        assertThat(look("P07", "photo.csv", "\u00FF\u00D8\u00FF\u00E0 picture").body())
                .contains("photo.csv is a JPEG picture");
        HttpResponse<String> look = look("P07", "flight.csv", log());
        HttpResponse<String> refused = desk.post(
                "/traces",
                "token=" + token(look) + "&pack=P07&use-1=time&unit-1=s&use-2=cell1&unit-2=V&use-3=unused&note=mine");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("the log has 1 cell; P07 has 4 in series", "value=\"mine\"");
        assertThat(desk.post("/traces", "token=gone&pack=P07").body()).contains("no longer held here");
        assertThat(look("P99", "flight.csv", log()).statusCode()).isEqualTo(404);
        assertThat(desk.get("/traces/9").statusCode()).isEqualTo(404);
        assertThat(desk.workshop().traces().list()).isEmpty();
    }
}
