package fettle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Changes made by plain forms, as a browser without scripts sends them. */
final class ChangesTest {
    private static final String PACK = "tag=P07&chemistry=LiPo&cells=4S&capacity=5000&identity=confirmed";

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
    void tellsOfAChangeOnTheNextPageAndUndoesIt() {
        String next = desk.post("/kit/add/packs", PACK)
                .headers()
                .firstValue("Location")
                .orElseThrow();
        assertThat(desk.get(next).body()).contains("added pack P07", ">Undo</button>");

        long id = desk.workshop().history().recent(0, 1).get(0).id();
        HttpResponse<String> undone = desk.post("/journal/" + id + "/undo", "back=%2Fjournal");

        assertThat(undone.statusCode()).isEqualTo(303);
        assertThat(undone.headers().firstValue("Location"))
                .hasValueSatisfying(to -> assertThat(to).startsWith("/journal?done="));
        assertThat(desk.workshop().packs().list()).isEmpty();
        assertThat(desk.get("/journal").body()).contains("(undone)");
    }

    @Test
    void sendsNobodyToAnotherSite() {
        desk.post("/kit/add/packs", PACK);
        long id = desk.workshop().history().recent(0, 1).get(0).id();

        assertThat(desk.post("/journal/" + id + "/undo", "back=%2F%2Felsewhere.example%2F")
                        .headers()
                        .firstValue("Location"))
                .hasValueSatisfying(to -> assertThat(to).startsWith("/?done="));
    }

    @Test
    void showsEveryFaultAtItsFieldAndKeepsTheRest() {
        HttpResponse<String> refused =
                desk.post("/kit/add/packs", "tag=7&chemistry=LiPo&cells=4S&capacity=lots&keeper=%3Cb%3EAda");

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body())
                .contains("tag is \"7\"", "value=\"&lt;b>Ada\"", "value=\"lots\"")
                .doesNotContain("<b>Ada");
        assertThat(refused.body().split("aria-invalid=\"true\"", -1)).hasSize(3);
    }

    @Test
    void retiresAndRestores() {
        desk.post("/kit/add/packs", PACK);

        desk.post("/kit/retire/packs", "name=P07&reason=tired");
        assertThat(desk.get("/kit").body()).contains("Retired packs", "Restore P07");

        desk.post("/kit/restore/packs", "name=P07");
        assertThat(desk.get("/kit").body()).doesNotContain("Retired packs");
    }

    @Test
    void addsAndEditsEveryOtherKindOfKit() {
        assertThat(desk.post("/kit/add/sources", "name=shed&kind=mains+supply&power=700")
                        .statusCode())
                .isEqualTo(303);
        assertThat(desk.post(
                                "/kit/add/chargers",
                                "name=pair&ports=20A+400W+6S%0A20A+400W+6S&chemistries=LiPo,+NiMH&source=shed")
                        .statusCode())
                .isEqualTo(303);
        assertThat(desk.post("/kit/add/craft", "name=Blue+%26+white&kind=plane&cells=4S")
                        .statusCode())
                .isEqualTo(303);
        assertThat(desk.get("/kit/edit/craft?name=Blue+%26+white").body()).contains("Edit Blue &amp; white");

        assertThat(desk.post("/kit/edit/craft?name=Blue+%26+white", "name=Kestrel&kind=glider&cells=3S")
                        .statusCode())
                .isEqualTo(303);
        assertThat(desk.get("/kit").body())
                .contains("Kestrel", "glider", "pair", "shed")
                .doesNotContain("Blue");
    }

    @Test
    void loosensARuleOnlyWithAReasonAndShowsIt() {
        String looser = "chemistry=LiPo&pack=&quantity=storage-time&value=96+h&reason=";

        HttpResponse<String> refused = desk.post("/kit/rules", looser);
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("Give the reason", "value=\"96 h\"");

        assertThat(desk.post("/kit/rules", looser + "flown+twice+a+week").statusCode())
                .isEqualTo(303);
        assertThat(desk.get("/kit/rules?chemistry=LiPo").body())
                .contains("looser than usual", "flown twice a week", "96 h");

        assertThat(desk.post("/kit/rules/reset", "chemistry=LiPo&pack=&quantity=storage-time")
                        .statusCode())
                .isEqualTo(303);
        assertThat(desk.get("/kit/rules?chemistry=LiPo").body()).doesNotContain("looser than usual");
    }

    @Test
    void keepsAnEntryLineThatCannotBeSaved() {
        desk.post("/kit/add/packs", PACK);

        HttpResponse<String> refused = desk.post("/entry", "back=%2Fkit&line=P07+3.84+3.83+38.5+3.84");

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("value=\"P07 3.84 3.83 38.5 3.84\"", "column 15", "href=\"/kit\"");
        assertThat(desk.workshop().review().pack("P07").history().checks()).isEmpty();
    }

    @Test
    void savesAnEntryLineAndComesBack() {
        desk.post("/kit/add/packs", PACK);

        HttpResponse<String> saved = desk.post("/entry", "back=%2Fkit&line=P07+3.84+3.83+3.85+3.84+21C+rest+2h");

        assertThat(saved.statusCode()).isEqualTo(303);
        assertThat(saved.headers().firstValue("Location"))
                .hasValueSatisfying(to -> assertThat(to).startsWith("/kit?done="));
        assertThat(desk.workshop().review().pack("P07").history().checks()).hasSize(1);
        assertThat(desk.get("/kit/packs/P07").body()).contains("3.840 V", "Cells run from");
    }
}
