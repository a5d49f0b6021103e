package fettle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.workshop.TraceChoices;
import fettle.workshop.TraceProgress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;

/** The picture of a trace: panels, zoom by drag, key and button, one cursor for all, at both widths. */
final class TracePictureBrowserTest {
    private static final Duration PATIENCE = Duration.ofSeconds(30);

    @TempDir
    Path folder;

    private ChromeDriver browser;
    private OpenDesk desk;

    @BeforeEach
    void open() throws IOException {
        browser = Browser.open(folder.resolve("profile"));
        desk = OpenDesk.empty(folder);
        desk.workshop().packs().add(ShelfFixtures.lipo(4));
        desk.workshop().traces().add("P07", flight(), TraceChoices.NONE, TraceProgress.NONE);
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

    /** Ten minutes at ten samples a second, with bursts and one cell that dips. */
    private Path flight() throws IOException {
        StringBuilder text = new StringBuilder("time_s,c1 [V],c2 [V],c3 [V],c4 [V],current_A,temperature_C\n");
        for (int i = 0; i < 6_000; i++) {
            boolean run = i >= 600 && i < 4_800;
            double amps = run ? 20 + 15 * Math.sin(i / 40.0) : 0;
            double volts = 4.15 - 0.4 * Math.max(0, Math.min(4_200, i - 600)) / 4_200 - 0.004 * amps;
            double third = i >= 4_000 && i < 4_060 ? 2.8 : volts;
            text.append(String.format(
                    Locale.ROOT,
                    "%.1f,%.3f,%.3f,%.3f,%.3f,%.2f,%.1f%n",
                    i / 10.0,
                    volts,
                    volts,
                    third,
                    volts,
                    amps,
                    22 + i / 400.0));
        }
        return Files.writeString(folder.resolve("flight.csv"), text);
    }

    /** Keeps a picture of the page for people to look at. */
    private void keep(String name) throws IOException {
        Path pictures = Files.createDirectories(Path.of("target", "screenshots"));
        Files.write(pictures.resolve(name + ".png"), Browser.picture(browser));
    }

    private WebElement picture() {
        Browser.patience(browser, PATIENCE)
                .until(driver -> driver.findElements(By.cssSelector("#trace-picture .uplot"))
                                .size()
                        >= 4);
        return browser.findElement(By.id("trace-picture"));
    }

    private double shown(String edge) {
        String value = browser.findElement(By.id("trace-picture")).getAttribute("data-" + edge);
        return value == null ? Double.NaN : Double.parseDouble(value);
    }

    private void waitUntilShown(double from, double to) {
        Browser.patience(browser, PATIENCE)
                .until(driver -> Math.abs(shown("from") - from) < 1 && Math.abs(shown("to") - to) < 1);
    }

    @Test
    void drawsPanelsAndZoomsByKeyButtonAndDrag() throws IOException {
        Browser.resize(browser, 1600, 900);
        browser.get(desk.url("/traces/1"));
        WebElement picture = picture();
        picture.sendKeys("+");
        waitUntilShown(150, 450);
        picture.sendKeys("0");
        waitUntilShown(0, 599.9);
        browser.findElement(By.cssSelector("button.at")).click();
        waitUntilShown(395, 405);
        assertThat(Integer.parseInt(String.valueOf(picture().getAttribute("data-points"))))
                .as("every sample of ten seconds")
                .isBetween(100, 110);
        browser.findElement(By.cssSelector("[data-zoom=whole]")).click();
        waitUntilShown(0, 599.9);
        WebElement plot = picture().findElement(By.cssSelector(".u-over"));
        int width = plot.getSize().getWidth();
        new Actions(browser)
                .moveToElement(plot, -width / 4, 0)
                .clickAndHold()
                .moveByOffset(width / 4, 0)
                .release()
                .perform();
        waitUntilShown(150, 300);
        assertThat(Browser.console(browser)).isEmpty();
        keep("trace-1600");
    }

    @Test
    void linksTheCursorOfAllPanelsAndFitsAPhone() throws IOException {
        Browser.resize(browser, 360, 740);
        browser.get(desk.url("/traces/1"));
        WebElement plot = picture().findElement(By.cssSelector(".u-over"));
        new Actions(browser).moveToElement(plot).perform();
        Browser.patience(browser, PATIENCE)
                .until(driver ->
                        driver.findElements(By.cssSelector(".u-legend .u-series:first-child .u-value")).stream()
                                .allMatch(value -> value.getText().matches("\\d+:\\d\\d.*")));
        Number wide = (Number) browser.executeScript("return document.documentElement.scrollWidth");
        assertThat(wide.intValue()).isLessThanOrEqualTo(360);
        browser.findElement(By.id("trace-picture")).sendKeys(Keys.ARROW_RIGHT);
        assertThat(Browser.console(browser)).isEmpty();
        keep("trace-360");
    }
}
