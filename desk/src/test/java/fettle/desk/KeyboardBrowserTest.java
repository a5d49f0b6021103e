package fettle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.ExpectedConditions;

/** The main job with no pointer at all. */
final class KeyboardBrowserTest {
    private static final Duration PATIENCE = Duration.ofSeconds(60);
    private static final int MOST_TABS = 40;

    @TempDir
    Path folder;

    private ChromeDriver browser;
    private OpenDesk desk;

    @BeforeEach
    void open() {
        browser = Browser.open(folder.resolve("profile"));
        desk = OpenDesk.empty(folder);
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
    void skipsToThePage() {
        browser.get(desk.url("/journal"));
        browser.findElement(By.tagName("body")).sendKeys(Keys.TAB);
        assertThat(focused().getText()).isEqualTo("Skip to the page");
        assertThat(focused().getLocation().getX()).isNotNegative();

        focused().sendKeys(Keys.ENTER);
        assertThat(focused().getAttribute("id")).isEqualTo("main");
    }

    @Test
    void addsAPackEntersACheckAndUndoesIt() {
        browser.get(desk.url("/kit/add/packs"));
        tabTo("f-tag").sendKeys("P07");
        tabTo("f-chemistry").sendKeys("LiPo");
        tabTo("f-cells").sendKeys("4S");
        tabTo("f-capacity").sendKeys("5000");
        tabTo("f-identity").sendKeys("confirmed");
        focused().sendKeys(Keys.TAB);
        focused().sendKeys(Keys.ENTER);
        waitForMessage("added pack P07");

        browser.findElement(By.tagName("body")).sendKeys("/");
        assertThat(focused().getAttribute("id")).isEqualTo("line");
        focused().sendKeys("P07 3.84 3.83 3.85 3.84 21C rest 2h");
        waitFor(By.cssSelector("#reading .can-save"));
        focused().sendKeys(Keys.ENTER);
        waitForMessage("check of P07");
        assertThat(desk.workshop().review().pack("P07").history().checks()).hasSize(1);

        tabTo("undo").sendKeys(Keys.ENTER);
        waitForMessage("undid");
        assertThat(desk.workshop().review().pack("P07").history().checks()).isEmpty();
    }

    private WebElement tabTo(String id) {
        for (int tab = 0; tab < MOST_TABS; tab++) {
            if (id.equals(focused().getAttribute("id"))) {
                return focused();
            }
            focused().sendKeys(Keys.TAB);
        }
        throw new AssertionError(id + " is not reached within " + MOST_TABS + " tabs");
    }

    private WebElement focused() {
        return browser.switchTo().activeElement();
    }

    private void waitForMessage(String text) {
        Browser.patience(browser, PATIENCE)
                .until(ExpectedConditions.textToBePresentInElementLocated(By.className("done"), text));
    }

    private void waitFor(By what) {
        Browser.patience(browser, PATIENCE).until(ExpectedConditions.visibilityOfElementLocated(what));
    }
}
