package fettle.desk;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** Drives the Chromium of the system; nothing is downloaded. */
public final class Browser {
    private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
    private static final Path DRIVER = Path.of("/usr/bin/chromedriver");
    private static final Path PICTURES = Path.of("target", "screenshots");

    private static final int TALLEST = 1800;

    private Browser() {}

    /** Starts it, or skips the test with a clear message where there is none. */
    public static ChromeDriver open(Path profile) {
        assumeTrue(
                Files.isExecutable(CHROMIUM) && Files.isExecutable(DRIVER),
                "SKIPPED: browser tests need " + CHROMIUM + " and " + DRIVER + " (packages chromium, chromium-driver)");
        ChromeOptions options = new ChromeOptions();
        options.setBinary(CHROMIUM.toFile());
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--no-proxy-server",
                "--hide-scrollbars",
                "--user-data-dir=" + profile);
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(DRIVER.toFile())
                .usingAnyFreePort()
                .build();
        return new ChromeDriver(service, options);
    }

    /** Makes the page itself that wide, whatever the window's frame. */
    public static void resize(ChromeDriver driver, int width, int height) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    }

    /** What the console said since it was last asked. */
    public static List<String> console(ChromeDriver driver) {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(LogEntry::getMessage)
                .toList();
    }

    /** Keeps a picture of the page, down to what a person can take in, for people to look at. */
    public static void picture(ChromeDriver driver, String name) {
        Number height = (Number) driver.executeScript("return document.documentElement.scrollHeight");
        Number width = (Number) driver.executeScript("return window.innerWidth");
        resize(driver, width.intValue(), Math.min(TALLEST, height.intValue()));
        try {
            Files.createDirectories(PICTURES);
            Files.write(PICTURES.resolve(name + ".png"), driver.getScreenshotAs(OutputType.BYTES));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
