package fettle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.desk.frame.Theme;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.openqa.selenium.By;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.ExpectedConditions;

/** Every page over the demo club's book, folded and with everything unfolded, on a phone and on a wide screen. */
final class EveryPageBrowserTest {
    private static final List<String> PAGES = List.of(
            "/",
            "/kit",
            "/kit/packs/P03",
            "/kit/packs/P07",
            "/kit/packs/P09",
            "/kit/packs/N01",
            "/kit/rules?chemistry=LiPo",
            "/kit/rules?chemistry=lead-acid",
            "/kit/rules?chemistry=LiPo&pack=P01",
            "/traces",
            "/setups",
            "/setups/linkage?arm=10&horn=15&aft=100",
            "/worksheets",
            "/worksheets/load?chemistry=LiPo&cells=4S&capacity=5000&charge=95%25&resistance=3&load=40A",
            "/worksheets/charge",
            "/journal",
            "/checks",
            "/preferences",
            "/glossary",
            "/start",
            "/kit/packs/P08",
            "/kit/labels?pack=P02",
            "/kit/packs/P02/passport",
            "/journal?from=50",
            "/kit/add/packs",
            "/kit/add/craft",
            "/kit/add/chargers",
            "/kit/add/sources",
            "/kit/add/servos",
            "/outings",
            "/outings/day?name=Club%20day%20at%20the%20airstrip",
            "/outings/papers?name=Club%20day%20at%20the%20airstrip",
            "/outings/now?name=Club%20day%20at%20the%20airstrip",
            "/kit/add/outings",
            "/kit/edit/outings?name=Club%20day%20at%20the%20airstrip",
            "/setups/craft?name=Harrier",
            "/kit/fit?name=Harrier",
            "/kit/timer?name=Harrier&pack=P01",
            "/setups/linkage?craft=Harrier&surface=rudder",
            "/setups/surface?name=Harrier&part=elevator&volts=5.2V&speed=30m/s",
            "/setups/power?name=Harrier&input=12.6&output=6&continuous=5&peak=8",
            "/kit/edit/packs?name=P02",
            "/kit/edit/chargers?name=bench-pair");
    private static final String NO_SUCH_PAGE = "/kit/packs/NONE";
    private static final String UNFOLD = "document.querySelectorAll('details').forEach(each => each.open = true)";

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
    void fitsItsWidthAndLeavesTheConsoleEmpty(int width, int height) throws IOException {
        Browser.resize(browser, width, height);
        Browser.console(browser);
        for (String page : PAGES) {
            browser.get(desk.url(page));
            assertThat(pageWidth()).as("width of %s", page).isLessThanOrEqualTo(width);
            Browser.keep(browser, page.replaceAll("\\W+", "-") + width);
            browser.executeScript(UNFOLD);
            assertThat(pageWidth()).as("width of %s, unfolded", page).isLessThanOrEqualTo(width);
            assertThat(Browser.console(browser)).as("console of %s", page).isEmpty();
        }
        browser.get(desk.url(NO_SUCH_PAGE));
        assertThat(pageWidth()).isLessThanOrEqualTo(width);
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void breaksNoAccessibilityRuleInAnyTheme(Theme theme) {
        Browser.resize(browser, 360, 740);
        choose(theme);
        for (String page : PAGES) {
            browser.get(desk.url(page));
            browser.executeScript(UNFOLD);
            Accessibility.check(browser, theme + " " + page);
        }
        browser.get(desk.url(NO_SUCH_PAGE));
        Accessibility.check(browser, NO_SUCH_PAGE);
        choose(Theme.PAPER);
    }

    @Test
    void everyWordInSunlightStandsOutSevenToOne() {
        choose(Theme.SUNLIGHT);
        int compared = 0;
        for (String page : PAGES) {
            browser.get(desk.url(page));
            browser.executeScript(UNFOLD);
            Contrast found = Contrast.of(browser);
            assertThat(found.weakest())
                    .as("contrast on %s: %s", page, found.where())
                    .isGreaterThanOrEqualTo(7);
            compared += found.compared();
        }
        choose(Theme.PAPER);
        assertThat(compared).isGreaterThan(1000);
    }

    private static void choose(Theme theme) {
        browser.get(desk.url("/preferences"));
        browser.findElement(By.cssSelector("footer button[value=" + theme.name() + "]"))
                .click();
        Browser.patience(browser, Duration.ofSeconds(60))
                .until(ExpectedConditions.presenceOfElementLocated(By.cssSelector("html." + theme.word())));
    }

    private static int pageWidth() {
        return ((Number) browser.executeScript("return document.documentElement.scrollWidth")).intValue();
    }
}
