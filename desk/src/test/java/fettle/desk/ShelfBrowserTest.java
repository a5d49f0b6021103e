package fettle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.ExpectedConditions;

/** A shelf of packs checked in one sitting. */
final class ShelfBrowserTest {
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    /** Stands in for a camera before a label, and for a browser that reads codes. */
    private static final String CAMERA = """
            window.BarcodeDetector = class { async detect() { return [{ rawValue: "http://10.0.0.2:4150/kit/packs/P07" }]; } };
            const canvas = document.createElement("canvas");
            canvas.getContext("2d").fillRect(0, 0, 10, 10);
            Object.defineProperty(navigator, "mediaDevices",
                { value: { getUserMedia: async () => canvas.captureStream(10) } });
            """;

    @TempDir
    Path folder;

    private ChromeDriver browser;
    private OpenDesk desk;

    @BeforeEach
    void open() {
        browser = Browser.open(folder.resolve("profile"));
        desk = OpenDesk.ofTheClub(folder);
    }

    @AfterEach
    void close() {
        if (browser != null) {
            browser.quit();
        }
        if (desk != null) {
            desk.close();
        }
    }

    @Test
    void takesPackAfterPackByKeyboardAloneAndUndoesOne() throws IOException {
        Browser.resize(browser, 360, 740);
        int before = checks("P07") + checks("P03");
        browser.get(desk.url("/checks"));
        type("p07", Keys.ENTER);
        assertThat(browser.findElement(By.id("step-pack")).getText()).startsWith("P07 is LiPo");
        type(readings("P07"), Keys.ENTER);
        type("P03", Keys.ENTER);
        type(readings("P03"), Keys.ENTER);
        waitForText(By.className("summary"), "2 rows, all understood");
        assertThat(browser.findElement(By.className("left")).getText())
                .doesNotContain("P07")
                .contains("P01");
        Browser.keep(browser, "checks-two-360");

        browser.findElement(By.cssSelector("#shelf .main")).sendKeys(Keys.ENTER);

        waitForText(By.id("saved"), "2 rows saved");
        assertThat(checks("P07") + checks("P03")).isEqualTo(before + 2);
        browser.findElement(By.cssSelector(".saved li:nth-child(1) button")).sendKeys(Keys.ENTER);
        waitForText(By.cssSelector(".saved li:nth-child(1)"), "(undone)");
        assertThat(checks("P07") + checks("P03")).isEqualTo(before + 1);
    }

    @Test
    void showsFaultsAtTheirRowsAndKeepsWhatWasTyped() throws IOException {
        int before = checks("P07");
        for (int[] size : new int[][] {{360, 740}, {820, 1180}, {1600, 1000}}) {
            Browser.resize(browser, size[0], size[1]);
            browser.get(desk.url("/checks"));
            WebElement rows = browser.findElement(By.id("sheet-rows"));
            rows.clear();
            rows.sendKeys("P07 " + readings("P07") + "\nP77 3.84 3.83\n");
            waitForText(By.className("summary"), "2 rows, 1 to mend");
            assertThat(browser.findElement(By.className("bad-row")).getText()).contains("row 2", "P77");
            assertThat(((Number) browser.executeScript("return document.documentElement.scrollWidth")).intValue())
                    .isLessThanOrEqualTo(size[0]);
            Accessibility.check(browser, "/checks");
            Browser.keep(browser, "checks-fault-" + size[0]);
        }

        browser.findElement(By.cssSelector("#shelf .main")).click();

        waitForText(By.tagName("h1"), "Check the shelf");
        assertThat(browser.findElement(By.id("sheet-rows")).getDomProperty("value"))
                .contains("P77 3.84 3.83");
        assertThat(checks("P07")).isEqualTo(before);
    }

    @Test
    void keepsUnsavedRowsWhenThePageIsClosed() {
        browser.get(desk.url("/checks"));
        browser.findElement(By.id("sheet-rows")).sendKeys("P07 " + readings("P07"));
        waitForText(By.className("summary"), "1 row, all understood");
        browser.get(desk.url("/kit"));
        browser.get(desk.url("/checks"));

        waitForText(By.className("summary"), "1 row, all understood");
        assertThat(browser.findElement(By.id("sheet-rows")).getDomProperty("value"))
                .startsWith("P07 ");
    }

    @Test
    void takesATagFromALabelByCameraWhereTheBrowserReadsCodes() {
        browser.executeCdpCommand("Page.addScriptToEvaluateOnNewDocument", Map.of("source", CAMERA));
        browser.get(desk.url("/checks"));

        browser.findElement(By.id("scan")).click();

        Browser.patience(browser, PATIENCE)
                .until(ExpectedConditions.domPropertyToBe(browser.findElement(By.id("step-tag")), "value", "P07"));
        assertThat(browser.switchTo().activeElement().getDomAttribute("id")).isEqualTo("step-readings");
        assertThat(browser.findElements(By.tagName("video"))).isEmpty();
        assertThat(Browser.console(browser)).isEmpty();
    }

    @Test
    void offersNoCameraWhereTheBrowserReadsNoCodes() {
        browser.executeCdpCommand(
                "Page.addScriptToEvaluateOnNewDocument", Map.of("source", "delete window.BarcodeDetector"));
        browser.get(desk.url("/checks"));

        assertThat(browser.findElement(By.id("scan")).isDisplayed()).isFalse();
        assertThat(browser.findElement(By.id("step-tag")).isDisplayed()).isTrue();
    }

    private int checks(String tag) {
        return desk.workshop().review().pack(tag).history().checks().size();
    }

    private String readings(String tag) {
        int cells = desk.workshop().packs().find(tag).item().cellsInSeries();
        return String.join(" ", List.of("3.84 ".repeat(cells).strip().split(" ")));
    }

    private void type(CharSequence... keys) {
        browser.switchTo().activeElement().sendKeys(keys);
    }

    private void waitForText(By where, String text) {
        Browser.patience(browser, PATIENCE)
                .ignoring(org.openqa.selenium.StaleElementReferenceException.class)
                .until(ExpectedConditions.textToBePresentInElementLocated(where, text));
    }
}
