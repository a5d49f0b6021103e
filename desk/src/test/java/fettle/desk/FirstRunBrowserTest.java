package fettle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
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

/** From an empty book to one real pack checked, and words explained on the way. */
final class FirstRunBrowserTest {
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
    void endsWithOneRealPackChecked() throws IOException {
        browser.get(desk.url("/"));
        see(By.cssSelector("a[href='/start']")).click();
        see(By.cssSelector("main a[href='/kit/add/packs']")).click();
        fill("f-tag", "P01");
        fill("f-chemistry", "LiPo");
        fill("f-cells", "4S");
        fill("f-capacity", "5000");
        fill("f-identity", "confirmed");
        see(By.id("f-tag")).submit();
        see(By.className("done"));

        browser.get(desk.url("/"));
        see(By.cssSelector(".guide a")).click();
        fill("f-readings", "3.84 38.3 3.85 3.84");
        fill("f-rest", "2");
        see(By.id("f-readings")).submit();
        assertThat(see(By.cssSelector("main .problems")).getText()).contains("38.3");
        assertThat(see(By.id("f-readings")).getDomProperty("value")).isEqualTo("3.84 38.3 3.85 3.84");
        Accessibility.check(browser, "/start, refused");
        Browser.keep(browser, "start-refused-360");
        see(By.id("f-readings")).clear();
        fill("f-readings", "3.84 3.83 3.85 3.84");
        see(By.id("f-readings")).submit();

        assertThat(see(By.className("verdict")).getText()).contains("P01", "LiPo 4S 5000 mAh");
        assertThat(desk.workshop().review().pack("P01").history().checks()).hasSize(1);
        Accessibility.check(browser, "/start, done");
        Browser.keep(browser, "start-done-360");
    }

    @Test
    void saysWhatToMeasureNextAndExplainsWordsByKeyboard() throws IOException {
        desk.post("/kit/add/packs", "tag=P01&chemistry=LiPo&cells=4S&capacity=5000&identity=unconfirmed");
        browser.get(desk.url("/kit/packs/P01"));

        assertThat(see(By.className("next")).getText()).contains("confirm", "4 cells");
        WebElement term = browser.findElement(By.className("term"));
        WebElement meaning = browser.findElement(By.id(term.getDomAttribute("popovertarget")));
        assertThat(meaning.isDisplayed()).isFalse();
        term.sendKeys(Keys.ENTER);
        assertThat(meaning.isDisplayed()).isTrue();
        Accessibility.check(browser, "/kit/packs/P01 with a word explained");
        Browser.keep(browser, "term-360");
        browser.switchTo().activeElement().sendKeys(Keys.ESCAPE);
        assertThat(meaning.isDisplayed()).isFalse();
        see(By.cssSelector(".next a[data-begin='P01 ']")).click();
        assertThat(browser.findElement(By.id("line")).getDomProperty("value")).isEqualTo("P01 ");
    }

    private void fill(String id, String text) {
        see(By.id(id)).sendKeys(text);
    }

    private WebElement see(By what) {
        return Browser.patience(browser, Duration.ofSeconds(60))
                .until(ExpectedConditions.visibilityOfElementLocated(what));
    }
}
