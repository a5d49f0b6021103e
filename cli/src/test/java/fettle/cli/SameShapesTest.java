package fettle.cli;

import static fettle.cli.ShellAssert.done;
import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fettle.desk.Desk;
import fettle.desk.DeskOptions;
import fettle.workshop.Workshop;
import fettle.workshop.demo.DemoBook;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a command prints with {@code --json} is what the desk answers under {@code /api}. */
final class SameShapesTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Map<String, String> ADDRESS_OF = Map.ofEntries(
            entry("today", "api/review"),
            entry("pack list --all", "api/packs"),
            entry("pack show P02", "api/packs/P02"),
            entry("pack label P02 P03 --sheet a4-70x36", "api/labels?pack=P02&pack=P03&sheet=a4-70x36"),
            entry("craft list --all", "api/craft"),
            entry("craft show Harrier", "api/craft/Harrier"),
            entry("charger list --all", "api/chargers"),
            entry("charger show bench-pair", "api/chargers/bench-pair"),
            entry("source list --all", "api/sources"),
            entry("rule list --chemistry LiFePO4", "api/rules?chemistry=LiFePO4"),
            entry("journal --limit 30 --skip 5", "api/journal?limit=30&offset=5"),
            entry("setup list Harrier", "api/setups/Harrier"),
            entry("outing list --all", "api/outings"),
            entry("outing show \"Club day at the airstrip\"", "api/outings/Club%20day%20at%20the%20airstrip"),
            entry("outing now \"Club day at the airstrip\"", "api/outings/Club%20day%20at%20the%20airstrip/now"),
            entry("outing papers \"Club day at the airstrip\"", "api/outings/Club%20day%20at%20the%20airstrip/papers"),
            entry("trace list --pack P02", "api/traces?pack=P02"),
            entry("trace show 1", "api/traces/1"));

    @TempDir
    private Path home;

    @Test
    void commandLineAndDeskAnswerInTheSameShapes() throws Exception {
        Path book = home.resolve("fettle");
        DemoBook.make(book, Shell.NOW, line -> {});
        Map<String, JsonNode> printed = new LinkedHashMap<>();
        for (String words : ADDRESS_OF.keySet()) {
            Shell.Result shown = new Shell(home).line(words + " --json");
            done(shown);
            printed.put(words, JSON.readTree(shown.out()));
        }

        Clock clock = Clock.fixed(Shell.NOW, ZoneOffset.UTC);
        try (Workshop workshop = Workshop.open(book, clock, "Robin");
                Desk desk = Desk.start(workshop, DeskOptions.onLoopback(0, clock, null))) {
            for (Map.Entry<String, JsonNode> entry : printed.entrySet()) {
                String address = desk.url() + ADDRESS_OF.get(entry.getKey());
                assertThat(JSON.readTree(get(address))).as(entry.getKey()).isEqualTo(entry.getValue());
                assertThat(entry.getValue()).as(entry.getKey()).isNotEmpty();
            }
        }
    }

    private static String get(String address) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(address)).build();
        return HttpClient.newHttpClient()
                .send(request, HttpResponse.BodyHandlers.ofString())
                .body();
    }
}
