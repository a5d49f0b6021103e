package fettle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.desk.frame.Back;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Text typed in any field comes back as text, never as part of a page. */
final class EscapingTest {
    private static final String HOSTILE = "\"'><script>alert(1)</script><img src=x onerror=alert(2)>";

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

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '|',
            value = {
                "packs, tag=P07&chemistry=LiPo&cells=4S&capacity=5000&identity=confirmed&chargeRating=&dischargeRating="
                        + "&mass=&connector=&bought=&keeper=&limits=&note=",
                "craft, name=Kestrel&kind=plane&cells=4S&connector=&typicalCurrent=&peakCurrent=&keeper=&note=",
                "chargers, name=pair&ports=20A 400W 6S&chemistries=LiPo&totalPower=&source=&note=",
                "sources, name=shed&kind=mains supply&power=700 W&energy=&note="
            })
    void inEveryFieldOfEveryForm(String kind, String usual) {
        Map<String, String> words = new LinkedHashMap<>();
        for (String pair : usual.split("&")) {
            String[] parts = pair.split("=", 2);
            words.put(parts[0], parts[1]);
        }
        int kept = 0;
        for (String field : words.keySet()) {
            Map<String, String> hostile = new LinkedHashMap<>(words);
            hostile.put(field, HOSTILE);
            if (!field.equals("tag") && !field.equals("name")) {
                hostile.replaceAll(
                        (key, word) -> key.equals("tag") || key.equals("name") ? word + field.length() : word);
            }
            HttpResponse<String> answer = desk.post("/kit/add/" + kind, form(hostile));
            assertThat(answer.statusCode()).as(field).isIn(303, 422);
            assertHarmless(answer.body(), kind + " " + field);
            kept += answer.statusCode() == 303 ? 1 : 0;
        }
        assertThat(kept).as("fields that take free text").isPositive();
        desk.workshop().packs().list().forEach(pack -> assertPage("/kit/packs/" + pack.name(), false));
        List.of("/", "/journal").forEach(page -> assertPage(page, false));
        assertPage("/kit", false);
    }

    @Test
    void inNamesOfKitOnTheirOwnForm() {
        desk.post("/kit/add/craft", form(Map.of("name", HOSTILE, "kind", "plane")));
        String name = desk.workshop().craft().list().get(0).name();

        assertThat(name).isEqualTo(HOSTILE);
        assertPage("/kit", true);
        assertPage("/kit/edit/craft?name=" + Back.encode(name), true);
        assertThat(desk.post("/kit/retire/craft", form(Map.of("name", name, "reason", HOSTILE)))
                        .statusCode())
                .isEqualTo(303);
        assertPage("/kit", true);
        assertPage("/journal", true);
    }

    @Test
    void inTheEntryLineAndItsPreview() {
        for (String line : List.of(HOSTILE, "P07 3.84 " + HOSTILE, "P07 charged " + HOSTILE)) {
            assertHarmless(
                    desk.post("/entry/preview", form(Map.of("line", line))).body(), line);
            HttpResponse<String> refused = desk.post("/entry", form(Map.of("line", line, "back", HOSTILE)));
            assertThat(refused.statusCode()).isEqualTo(422);
            assertHarmless(refused.body(), line);
        }
    }

    @Test
    void inTheReasonAndTheValueOfARule() {
        Map<String, String> rule = Map.of("chemistry", "LiPo", "pack", "", "quantity", "storage-time");
        Map<String, String> looser = new LinkedHashMap<>(rule);
        looser.putAll(Map.of("value", "96 h", "reason", HOSTILE));
        Map<String, String> noValue = new LinkedHashMap<>(rule);
        noValue.putAll(Map.of("value", HOSTILE, "reason", HOSTILE));

        assertThat(desk.post("/kit/rules", form(looser)).statusCode()).isEqualTo(303);
        HttpResponse<String> refused = desk.post("/kit/rules", form(noValue));

        assertThat(refused.statusCode()).isEqualTo(422);
        assertHarmless(refused.body(), "value");
        assertPage("/kit/rules?chemistry=LiPo", true);
        assertPage("/journal", false);
    }

    @Test
    void inAddresses() {
        String hostile = Back.encode(HOSTILE);
        for (String page : List.of(
                "/" + hostile,
                "/kit/packs/" + hostile,
                "/kit/edit/craft?name=" + hostile,
                "/kit/rules?chemistry=" + hostile,
                "/kit/rules?pack=" + hostile,
                "/?done=" + hostile,
                "/journal?from=" + hostile)) {
            assertPage(page, false);
        }
    }

    private void assertPage(String page, boolean mustShowIt) {
        String body = desk.get(page).body();
        assertHarmless(body, page);
        if (mustShowIt) {
            assertThat(body).as(page).contains("&lt;script");
        }
    }

    private static void assertHarmless(String body, String where) {
        assertThat(body)
                .as(where)
                .doesNotContain("<script>alert")
                .doesNotContain("<img")
                .doesNotContain("'><");
    }

    private static String form(Map<String, String> words) {
        return words.entrySet().stream()
                .map(word -> word.getKey() + "=" + Back.encode(word.getValue()))
                .collect(Collectors.joining("&"));
    }
}
