package fettle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.engine.control.sweep.Sweep;
import fettle.engine.control.sweep.SweepPoint;
import fettle.engine.pack.Craft;
import fettle.engine.pack.CraftKind;
import fettle.workshop.ServoForm;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
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

/** Set-up sheets and the moving linkage in a browser. */
final class SetUpsBrowserTest {
    private static final String LINKAGE = "/setups/linkage?arm=10&horn=15&aft=100&above=0&low=1100&high=1900&speed=30"
            + "&torque=6&craft=Kite%20two&surface=rudder";
    private static final String RUDDER = "rudder; wing; 1100 1500 1900; 80 mm; high 25/25, low 15/15; arm 10; horn 15";

    @TempDir
    Path folder;

    private ChromeDriver browser;
    private OpenDesk desk;

    @BeforeEach
    void open() {
        browser = Browser.open(folder.resolve("profile"));
        desk = OpenDesk.empty(folder);
        desk.workshop().craft().add(new Craft("Kite two", CraftKind.PLANE, null, "", null, null, "", ""));
        List<SweepPoint> points = IntStream.rangeClosed(0, 100)
                .mapToObj(step -> new SweepPoint(
                        1e-6 * (1000 + 10 * step), 0.2 + 0.002 * (step % 2) + 0.06 * Math.max(0, step - 85)))
                .toList();
        desk.workshop().setUps().keep("Kite two", "rudder", "rudder.csv", Sweep.of(points));
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
    void sliderMovesTheLinkageByOneFiveAndTwentyFive() throws IOException {
        Browser.resize(browser, 1200, 1500);
        browser.get(desk.url(LINKAGE));
        WebElement slider = browser.findElement(By.id("pulse"));
        String level = surface();

        slider.sendKeys(Keys.ARROW_RIGHT);
        assertThat(reading()).startsWith("1501 µs: surface 0.1°");
        slider.sendKeys(Keys.chord(Keys.SHIFT, Keys.ARROW_RIGHT));
        assertThat(reading()).startsWith("1506 µs");
        slider.sendKeys(Keys.PAGE_UP);
        assertThat(reading()).startsWith("1531 µs");
        browser.findElement(By.cssSelector("[data-step='-25']")).click();
        browser.findElement(By.cssSelector("[data-step='-5']")).click();
        browser.findElement(By.cssSelector("[data-step='-1']")).click();
        assertThat(reading()).startsWith("1500 µs");
        slider.sendKeys(Keys.END);
        // the engine's own figure at 40° of servo; reference folder, standards/linkage.csv, L2: 25.574° at 40°
        assertThat(reading()).startsWith("1900 µs: surface 25.").contains("torque", "margin");
        assertThat(surface()).isNotEqualTo(level);
        assertThat(browser.findElements(By.cssSelector(".panel"))).hasSize(4);
        assertThat(browser.findElement(By.cssSelector(".legend")).getText())
                .contains("usable by the sweep: 1000 to 18");
        assertThat(Browser.console(browser)).isEmpty();
        keepPicture("linkage");
    }

    @Test
    void refusedLinkageKeepsWhatWasTypedWithItsFault() {
        browser.get(desk.url("/setups/linkage?arm=10&horn=4&aft=100"));

        assertThat(browser.findElements(By.id("linkage"))).isEmpty();
        assertThat(browser.findElement(By.name("horn")).getAttribute("value")).isEqualTo("4");
        assertThat(browser.findElement(By.cssSelector(".fault")).getText()).contains("past");
    }

    @Test
    void sheetIsKeptComparedAndRefusedWithItsLine() throws IOException {
        Browser.resize(browser, 1200, 1600);
        browser.get(desk.url("/setups"));
        browser.findElement(By.linkText("Kite two")).click();
        keep(RUDDER);
        keep(RUDDER.replace("1500", "1512"));

        assertThat(browser.findElement(By.id("main")).getText())
                .contains(
                        "rudder, centre: 1500 µs → 1512 µs", "Failsafe.", "34.6 mm (25.0°)", "end points 1000 µs and");
        keepPicture("sheet");
        keep("rudder; wing");
        assertThat(browser.findElement(By.cssSelector("[role=alert]")).getText())
                .startsWith("line 1: 2 parts");
        assertThat(browser.findElement(By.id("surfaces-typed")).getAttribute("value"))
                .isEqualTo("rudder; wing");
    }

    @Test
    void sweepIsTakenFromAFileAndRefusedWhereItsUnitIsInDoubt() throws IOException {
        Path file = folder.resolve("left.csv");
        Files.writeString(
                file,
                "pulse,current\n"
                        + IntStream.rangeClosed(0, 80)
                                .mapToObj(step -> (1000 + 10 * step) + "," + (8 + step % 2))
                                .collect(Collectors.joining("\n")));
        browser.get(desk.url("/setups/craft?name=Kite%20two"));
        take(file);
        assertThat(browser.findElement(By.cssSelector("[role=alert]")).getText())
                .contains("mA or A?");
        assertThat(browser.findElement(By.id("swept")).getAttribute("value")).isEqualTo("left aileron");

        new Select(browser.findElement(By.id("sweep-unit"))).selectByVisibleText("mA");
        take(file);
        assertThat(browser.findElement(By.cssSelector(".done")).getText()).contains("swept left aileron of Kite two");
        assertThat(desk.workshop().setUps().sweeps("Kite two", "left aileron")).hasSize(1);
    }

    @Test
    void linkageOfTheSheetIsDrawnWorkedOutAndAddedUp() throws IOException {
        desk.workshop()
                .servos()
                .add(new ServoForm("wing", "", "", "", "", "", "6V 5.5kgcm 0.12s idle 9mA moving 0.28A stall 1.6A")
                        .toServo());
        desk.workshop().setUps().add("Kite two", RUDDER + "; cables aft 120", null, "");
        Browser.resize(browser, 1600, 1400);
        browser.get(desk.url("/setups/craft?name=Kite%20two"));
        browser.findElement(By.linkText("draw")).click();

        assertThat(browser.findElements(By.cssSelector("#linkage .joint"))).hasSize(2);
        WebElement rod = browser.findElement(By.cssSelector(".joint .rod"));
        String before = rod.getAttribute("x1");
        browser.findElement(By.id("pulse")).sendKeys(Keys.END);
        assertThat(rod.getAttribute("x1")).isNotEqualTo(before);
        keepPicture("cables");

        browser.get(desk.url("/setups/craft?name=Kite%20two"));
        browser.findElement(By.linkText("work out")).click();
        fill("volts", "6 V");
        fill("speed", "25 m/s");
        workOut();
        assertThat(browser.findElement(By.id("answer")).getText())
                .contains("times the torque to design for", "Pulse for high up (25.0°)", "Stall torque at 6.0 V");
        keepPicture("surface");

        browser.get(desk.url("/setups/craft?name=Kite%20two"));
        browser.findElement(By.linkText("Servo and receiver power")).click();
        fill("input", "12.6 V");
        fill("output", "6 V");
        fill("continuous", "3 A");
        workOut();
        assertThat(browser.findElement(By.id("main")).getText()).contains("Peak current");
        fill("peak", "5 A");
        workOut();
        assertThat(browser.findElement(By.id("answer")).getText()).contains("Taken: rudder; ", "; measured.");
        keepPicture("power");
    }

    @Test
    void typedReadingsAreSweptBesideTheSweepBeforeAndKeptWhereRefused() throws IOException {
        Browser.resize(browser, 1600, 1800);
        browser.get(desk.url("/setups/craft?name=Kite%20two"));
        type("rudder", "1000 200mA\n1100");
        assertThat(browser.findElement(By.cssSelector("[role=alert]")).getText())
                .contains("line 2: \"1100\" is no reading");
        assertThat(browser.findElement(By.id("sweep-points")).getAttribute("value"))
                .isEqualTo("1000 200mA\n1100");

        String up = IntStream.rangeClosed(0, 20)
                .mapToObj(step -> (1000 + 50 * step) + " 260mA " + (step * 5 - 50))
                .collect(Collectors.joining("\n"));
        String down = IntStream.rangeClosed(0, 20)
                .mapToObj(step -> (2000 - 50 * step) + " 260mA " + (51 - step * 5))
                .collect(Collectors.joining("\n"));
        type("rudder", up + "\n" + down);
        assertThat(browser.findElement(By.id("main")).getText())
                .contains("Since the sweep before:", "running current rose", "hysteresis 1.00", "dead band with play");
        assertThat(browser.findElements(By.cssSelector(".swept:first-of-type .panel")))
                .hasSize(2);
        keepPicture("sheet-sweeps");
    }

    private void type(String surface, String readings) {
        WebElement swept = browser.findElement(By.id("swept"));
        swept.clear();
        swept.sendKeys(surface);
        WebElement points = browser.findElement(By.id("sweep-points"));
        points.clear();
        points.sendKeys(readings);
        browser.findElement(By.xpath("//button[text()='Keep the sweep']")).click();
        Browser.patience(browser, Duration.ofSeconds(20)).until(ExpectedConditions.stalenessOf(swept));
    }

    private void workOut() {
        WebElement button = browser.findElement(By.xpath("//button[text()='Work it out']"));
        button.click();
        Browser.patience(browser, Duration.ofSeconds(20)).until(ExpectedConditions.stalenessOf(button));
    }

    private void fill(String field, String typed) {
        WebElement element = browser.findElement(By.name(field));
        element.clear();
        element.sendKeys(typed);
    }

    private void take(Path file) {
        WebElement surface = browser.findElement(By.id("swept"));
        surface.clear();
        surface.sendKeys("left aileron");
        browser.findElement(By.id("sweep-file")).sendKeys(file.toString());
        browser.findElement(By.xpath("//button[text()='Keep the sweep']")).click();
        Browser.patience(browser, Duration.ofSeconds(20)).until(ExpectedConditions.stalenessOf(surface));
    }

    @Test
    void fitsAPhoneAndBreaksNoAccessibilityRule() throws IOException {
        desk.workshop().setUps().add("Kite two", RUDDER, null, "");
        Browser.resize(browser, 360, 740);
        for (String page : List.of("/setups", "/setups/craft?name=Kite%20two", LINKAGE, "/setups/linkage")) {
            browser.get(desk.url(page));
            assertThat(((Number) browser.executeScript("return document.documentElement.scrollWidth")).intValue())
                    .as(page)
                    .isLessThanOrEqualTo(360);
            Accessibility.check(browser, page);
        }
        browser.get(desk.url(LINKAGE));
        Browser.resize(browser, 360, 1500);
        keepPicture("linkage-phone");
    }

    private void keep(String surfaces) {
        WebElement typed = browser.findElement(By.id("surfaces-typed"));
        typed.clear();
        typed.sendKeys(surfaces);
        browser.findElement(By.xpath("//button[text()='Keep the sheet']")).click();
        Browser.patience(browser, Duration.ofSeconds(20)).until(ExpectedConditions.stalenessOf(typed));
    }

    private String reading() {
        return browser.findElement(By.id("reading-at")).getText();
    }

    private String surface() {
        return browser.findElement(By.id("surface")).getAttribute("y2");
    }

    /** For eyes: only where a folder is named. */
    private void keepPicture(String name) throws IOException {
        String pictures = System.getenv("FETTLE_PICTURES");
        if (pictures != null) {
            Files.write(Path.of(pictures, name + ".png"), Browser.picture(browser));
        }
    }
}
