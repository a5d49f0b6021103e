package fettle.desk;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.FluentWait;
import org.openqa.selenium.support.ui.WebDriverWait;

/** Drives the Chromium of the system; nothing is downloaded. */
public final class Browser {
    private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
    private static final Path DRIVER = Path.of("/usr/bin/chromedriver");

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

    /** What the page looks like, as a PNG. */
    public static byte[] picture(ChromeDriver driver) {
        return driver.getScreenshotAs(OutputType.BYTES);
    }

    /** Keeps a picture to look at, in the folder {@code fettle.look} names, where a run asks for it. */
    public static void keep(ChromeDriver driver, String name) throws IOException {
        String folder = System.getProperty("fettle.look");
        if (folder != null) {
            Files.createDirectories(Path.of(folder));
            Files.write(Path.of(folder, name + ".png"), picture(driver));
        }
    }

    /** Waits for a page, past what the browser answers while one page gives way to the next. */
    static FluentWait<WebDriver> patience(WebDriver browser, Duration most) {
        return new WebDriverWait(browser, most).ignoring(WebDriverException.class);
    }
}
