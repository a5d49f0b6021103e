package fettle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.ExpectedConditions;

/** Earlier lines come back, and a slip in a tag is mended by a press; units follow the reader. */
final class EntryRecallBrowserTest {
    @TempDir
    Path folder;

    @Test
    void recallsLinesMendsATagAndFollowsTheReadersUnits() {
        ChromeDriver browser = Browser.open(folder.resolve("profile"));
        try (OpenDesk desk = OpenDesk.ofTheClub(folder)) {
            Browser.resize(browser, 360, 740);
            browser.get(desk.url("/"));
            line(browser).sendKeys("P77 swollen", Keys.ENTER);
            wait(browser, By.cssSelector("#reading .problems"));
            line(browser).clear();
            line(browser).sendKeys("half written", Keys.ARROW_UP);
            assertThat(line(browser).getDomProperty("value")).isEqualTo("P77 swollen");
            line(browser).sendKeys(Keys.ARROW_DOWN);
            assertThat(line(browser).getDomProperty("value")).isEqualTo("half written");
            line(browser).sendKeys(Keys.ARROW_UP);
            wait(browser, By.cssSelector(".meant button[data-line='P07 swollen']"))
                    .click();
            wait(browser, By.cssSelector("#reading .can-save"));
            assertThat(line(browser).getDomProperty("value")).isEqualTo("P07 swollen");

            browser.get(desk.url("/preferences"));
            browser.findElement(By.cssSelector("input[value=FAHRENHEIT]")).click();
            browser.findElement(By.cssSelector(".preferences .main")).click();
            wait(browser, By.cssSelector("input[value=FAHRENHEIT]:checked"));
            browser.get(desk.url("/kit/rules?chemistry=LiPo"));
            assertThat(browser.findElement(By.tagName("main")).getText())
                    .contains("°F")
                    .doesNotContain("°C");
            assertThat(Browser.console(browser)).allMatch(said -> said.contains("422"));
        } finally {
            browser.quit();
        }
    }

    private static WebElement line(ChromeDriver browser) {
        return browser.findElement(By.id("line"));
    }

    private static WebElement wait(ChromeDriver browser, By what) {
        return Browser.patience(browser, Duration.ofSeconds(60))
                .until(ExpectedConditions.visibilityOfElementLocated(what));
    }
}
