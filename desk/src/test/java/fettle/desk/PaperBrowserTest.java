package fettle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.workshop.label.LabelGrid;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.chrome.ChromeDriver;

/** Papers as the browser shows and prints them. */
final class PaperBrowserTest {
    @TempDir
    static Path folder;

    private static ChromeDriver browser;
    private static OpenDesk desk;

    @BeforeAll
    static void open() {
        browser = Browser.open(folder.resolve("profile"));
        desk = OpenDesk.ofTheClub(folder);
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.quit();
        }
        if (desk != null) {
            desk.close();
        }
    }

    @ParameterizedTest
    @CsvSource({"360, 740", "820, 1180", "1600, 1000"})
    void fitsAndBreaksNoRule(int width, int height) throws IOException {
        Browser.resize(browser, width, height);
        Browser.console(browser);
        for (String page : new String[] {
            "/kit/labels", "/kit/labels?pack=P02&sheet=a5", "/kit/packs/P02/passport",
        }) {
            browser.get(desk.url(page));
            assertThat(((Number) browser.executeScript("return document.documentElement.scrollWidth")).intValue())
                    .as("width of %s", page)
                    .isLessThanOrEqualTo(width);
            Accessibility.check(browser, page);
            Browser.keep(browser, page.replaceAll("\\W+", "-") + width);
        }
        assertThat(Browser.console(browser)).allMatch(line -> line.contains("422"));
    }

    @Test
    void printsTheSheetAloneInItsOwnSize() {
        Browser.resize(browser, 1600, 1000);
        browser.get(desk.url("/kit/labels"));
        browser.findElement(By.cssSelector("input[value=P02]")).click();
        browser.findElement(By.id("f-sheet")).sendKeys("A4, 2 × 4");
        browser.findElement(By.cssSelector(".labels-form .main")).click();

        byte[] printed = printed();

        assertThat(PdfText.pages(printed)).isEqualTo(1);
        assertThat(PdfText.of(printed)).contains("P02").doesNotContain("Fettle", "Sheet", "P03");
        LabelGrid grid = LabelGrid.A4_105X74;
        assertThat(PdfText.code(
                        PdfText.page(printed, 0),
                        grid.leftMillimetres(0),
                        grid.topMillimetres(0),
                        grid.widthMillimetres(),
                        grid.heightMillimetres()))
                .isEqualTo("fettle:P02");
    }

    @Test
    void printsThePassportWithoutTheDesk() {
        browser.get(desk.url("/kit/packs/P02/passport"));

        assertThat(PdfText.of(printed()))
                .contains("Passport of pack P02", "Standing", "Record, newest first")
                .doesNotContain("Worksheets", "How to write it");
    }

    private static byte[] printed() {
        Map<String, Object> printed = browser.executeCdpCommand("Page.printToPDF", Map.of("preferCSSPageSize", true));
        return Base64.getDecoder().decode((String) printed.get("data"));
    }
}
