package fettle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.workshop.worksheet.Worksheet;
import fettle.workshop.worksheet.Worksheets;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class WorksheetsTest {
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
    void listsEveryWorksheetAndOpensItWithItsUsualValues() {
        String list = desk.get("/worksheets").body();
        for (Worksheet worksheet : Worksheets.all()) {
            assertThat(list).contains("href=\"/worksheets/" + worksheet.word() + "\"");
            assertThat(desk.get("/worksheets/" + worksheet.word()).body())
                    .contains(worksheet.title(), "Work it out")
                    .doesNotContain("role=\"alert\"");
        }
    }

    @Test
    void answersWithDoubtAndWorkingAndKeepsNothing() {
        String page = desk.get("/worksheets/load?chemistry=LiPo&cells=4S&capacity=5000&charge=95%25&resistance=3"
                        + "&load=40A&leads=&mass=&temperature=25&air=25")
                .body();
        assertThat(page).contains("Lasts", "± from", "how it was reached", "value=\"40A\"");
        assertThat(desk.workshop().history().recent(0, 1)).isEmpty();
    }

    @Test
    void tellsAMistakeAtItsFieldAndKeepsWhatWasTyped() {
        HttpResponse<String> refused =
                desk.get("/worksheets/load?cells=4S&capacity=five&charge=95%25&resistance=3&load=40A");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("which is not one number with a unit", "aria-invalid=\"true\"");
    }
}
