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
import org.openqa.selenium.support.ui.Select;

/** A pack added with a mistake corrected, a check entered with a mistake corrected, and undo. */
final class KitBrowserTest {
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    @TempDir
    Path folder;

    private ChromeDriver browser;
    private OpenDesk desk;

    @BeforeEach
    void open() {
        browser = Browser.open(folder.resolve("profile"));
        desk = OpenDesk.empty(folder);
        Browser.resize(browser, 360, 740);
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
    void keepsTheFormOfAPackWithAMistakeUntilItIsMended() {
        browser.get(desk.url("/kit/add/packs"));
        type("tag", "P07");
        new Select(field("chemistry")).selectByValue("LiPo");
        type("cells", "44S");
        type("capacity", "5000");
        new Select(field("identity")).selectByValue("confirmed");
        field("tag").submit();

        WebElement fault = waitFor(By.cssSelector(".field.bad .fault"));
        assertThat(fault.getText()).contains("44").contains("1 to 24");
        assertThat(field("cells").getAttribute("aria-invalid")).isEqualTo("true");
        assertThat(field("tag").getAttribute("value")).isEqualTo("P07");
        assertThat(desk.workshop().packs().list()).isEmpty();

        type("cells", "4S");
        field("tag").submit();

        assertThat(waitFor(By.className("done")).getText()).contains("P07");
        assertThat(desk.workshop().packs().find("P07").item().cellsInSeries()).isEqualTo(4);
    }

    @Test
    void showsAMistakeInTheEntryLineBeforeItIsSavedAndUndoesTheCheck() {
        addPack();
        browser.get(desk.url("/"));
        WebElement line = browser.findElement(By.id("line"));
        line.sendKeys("P07 3.84 3.83 38.5 3.84 21C rest 2h");

        waitFor(By.cssSelector("#reading .problems"));
        assertThat(browser.findElement(By.cssSelector("#reading .bad")).getText())
                .contains("38.5");
        assertThat(browser.findElement(By.cssSelector("#reading .problems")).getText())
                .contains("column 15");

        browser.findElement(By.id("line")).sendKeys(Keys.ENTER);
        waitFor(By.cssSelector("#reading .problems"));
        assertThat(checks()).isZero();
        assertThat(browser.findElement(By.id("line")).getAttribute("value")).contains("38.5");

        line = browser.findElement(By.id("line"));
        line.clear();
        line.sendKeys("P07 3.84 3.83 3.85 3.84 21C rest 2h");
        waitFor(By.cssSelector("#reading .can-save"));
        line.sendKeys(Keys.ENTER);

        WebElement done = waitFor(By.className("done"));
        assertThat(checks()).isEqualTo(1);
        done.findElement(By.tagName("button")).click();
        Browser.patience(browser, PATIENCE)
                .until(ExpectedConditions.textToBePresentInElementLocated(By.className("done"), "undid"));
        assertThat(checks()).isZero();
    }

    @Test
    void goesToTheEntryLineWithASlash() {
        browser.get(desk.url("/journal"));
        browser.findElement(By.tagName("body")).sendKeys("/");

        assertThat(browser.switchTo().activeElement().getAttribute("id")).isEqualTo("line");
        assertThat(browser.findElement(By.id("line")).getAttribute("value")).isEmpty();
    }

    @Test
    void keepsTheThemeOnceChosen() {
        browser.get(desk.url("/journal"));
        browser.findElement(By.cssSelector("footer button[value=SUNLIGHT]")).click();
        waitFor(By.cssSelector("html.sunlight"));
        browser.get(desk.url("/"));

        assertThat(browser.findElements(By.cssSelector("html.sunlight"))).hasSize(1);
    }

    private void addPack() {
        int status = desk.post("/kit/add/packs", "tag=P07&chemistry=LiPo&cells=4S&capacity=5000&identity=confirmed")
                .statusCode();
        assertThat(status).isEqualTo(303);
    }

    private int checks() {
        return desk.workshop().review().pack("P07").history().checks().size();
    }

    private WebElement field(String name) {
        return browser.findElement(By.id("f-" + name));
    }

    private void type(String name, String text) {
        field(name).clear();
        field(name).sendKeys(text);
    }

    private WebElement waitFor(By what) {
        return Browser.patience(browser, PATIENCE).until(ExpectedConditions.visibilityOfElementLocated(what));
    }
}
