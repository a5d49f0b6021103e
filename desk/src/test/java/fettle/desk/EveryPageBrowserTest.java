package fettle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.chrome.ChromeDriver;

final class EveryPageBrowserTest {
    private static final Map<String, String> PAGES = Map.of(
            "today", "/",
            "kit", "/kit",
            "pack", "/kit/packs/P03",
            "rules", "/kit/rules?chemistry=LiPo",
            "journal", "/journal",
            "add-pack", "/kit/add/packs",
            "edit-charger", "/kit/add/chargers",
            "worksheets", "/worksheets",
            "worksheet", "/worksheets/load?chemistry=LiPo&cells=4S&capacity=5000&charge=95%25&resistance=3&load=40A",
            "not-found", "/kit/packs/NONE");

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
    @ValueSource(ints = {360, 1600})
    void fitsItsWidthAndLeavesTheConsoleEmpty(int width) {
        PAGES.forEach((name, path) -> {
            Browser.resize(browser, width, 740);
            Browser.console(browser);
            browser.get(desk.url(path));
            Number wide = (Number) browser.executeScript("return document.documentElement.scrollWidth");
            assertThat(wide.intValue()).as("width of %s", path).isLessThanOrEqualTo(width);
            if (!name.equals("not-found")) {
                assertThat(Browser.console(browser)).as("console of %s", path).isEmpty();
            }
            Browser.picture(browser, name + "-" + width);
        });
    }
}
