package fettle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.engine.outing.KeptPlan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.print.PrintOptions;
import org.openqa.selenium.support.ui.ExpectedConditions;

/** The club's next day out in a browser: planned, printed, and followed on a phone. */
final class OutingsBrowserTest {
    private static final String NAME = "Club day at the airstrip";
    private static final String PAGE = "/outings/day?name=Club%20day%20at%20the%20airstrip";
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    @TempDir
    Path folder;

    private ChromeDriver browser;
    private OpenDesk desk;

    @BeforeEach
    void open() {
        browser = Browser.open(folder.resolve("profile"));
        desk = OpenDesk.ofTheClub(folder);
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
    void daySheetShowsEveryPlannedRunAndPrints() throws IOException {
        Browser.resize(browser, 1600, 1000);
        browser.get(desk.url("/outings"));
        press(By.linkText(NAME));
        KeptPlan plan = desk.workshop().outings().find(NAME).plan();
        assertThat(plan.runs()).isNotEmpty();
        assertThat(browser.findElements(By.cssSelector(".day-sheet .bar.run")))
                .hasSize(plan.runs().size());
        assertThat(browser.findElements(By.cssSelector(".day-sheet .bar.charge, .day-sheet .bar.to-storage")))
                .hasSize(plan.charges().size());
        assertThat(Browser.console(browser)).isEmpty();
        keepPicture("outing-1600");
        byte[] printed =
                Base64.getDecoder().decode(browser.print(new PrintOptions()).getContent());
        try (PDDocument document = Loader.loadPDF(printed)) {
            String text = new PDFTextStripper().getText(document);
            assertThat(text).contains(NAME, "Stay with every charge", "Harrier", "field-pair port 1");
            plan.runs().forEach(run -> assertThat(text).contains(run.run()));
        }
    }

    @Test
    void aSearchInTheBackgroundShowsItsPlanAndCanBeStopped() {
        browser.get(desk.url(PAGE));
        WebElement seconds = browser.findElement(By.id("seconds"));
        seconds.clear();
        seconds.sendKeys("60 s");
        browser.findElement(By.cssSelector(".plan-form .main")).click();
        Browser.patience(browser, PATIENCE)
                .until(ExpectedConditions.textToBePresentInElementLocated(By.id("search"), "a usable plan is there"));
        browser.findElement(By.cssSelector("#search button")).click();
        Browser.patience(browser, PATIENCE)
                .until(found -> found.findElements(By.id("search")).isEmpty()
                        && !found.findElements(By.cssSelector(".plan-form .main"))
                                .isEmpty());
        assertThat(browser.findElement(By.cssSelector(".plan-form .main")).getText())
                .isEqualTo("Plan again from now");
    }

    @Test
    void saysWhyNotAndKeepsWhatWasTypedWrongly() {
        browser.get(desk.url(PAGE));
        browser.findElement(By.id("why")).sendKeys("P08");
        press(By.xpath("//button[text()='Why?']"));
        assertThat(browser.findElement(By.cssSelector("[aria-labelledby=why-head] [role=status]"))
                        .getText())
                .startsWith("P08");
        browser.findElement(By.id("what")).sendKeys("Harrier 9 with P01");
        press(By.xpath("//button[text()='Settle it']"));
        assertThat(browser.findElement(By.cssSelector("#what-hint .fault")).getText())
                .contains("no run of");
        assertThat(browser.findElement(By.id("what")).getAttribute("value")).isEqualTo("Harrier 9 with P01");
        WebElement what = browser.findElement(By.id("what"));
        what.clear();
        what.sendKeys("not P03");
        press(By.xpath("//button[text()='Settle it']"));
        assertThat(browser.findElement(By.cssSelector("[aria-labelledby=settled]"))
                        .getText())
                .contains("not P03");
        assertThat(browser.findElement(By.id("main")).getText()).contains("Out of date");
    }

    @Test
    void startFinishAndPutBackAreTappedOnAPhone() throws IOException {
        Browser.resize(browser, 360, 740);
        browser.get(desk.url(PAGE));
        keepPicture("outing-360");
        press(By.linkText("To take along"));
        keepPicture("papers-360");
        assertThat(browser.findElement(By.id("main")).getText()).contains("Confirm with the carrier", "not as baggage");
        browser.get(desk.url("/outings/now?name=Club%20day%20at%20the%20airstrip"));
        keepPicture("now-360");
        String run = desk.workshop().outings().find(NAME).plan().runs().get(0).run();
        tap("/outings/start", run);
        assertThat(browser.findElement(By.cssSelector("[aria-labelledby=going]"))
                        .getText())
                .contains(run);
        tap("/outings/finish", run);
        keepPicture("put-back-360");
        WebElement charge = browser.findElement(By.name("charge"));
        charge.sendKeys("lots");
        press(By.xpath("//button[text()='Note it']"));
        assertThat(browser.findElement(By.cssSelector("[role=alert]")).getText())
                .contains("charge put back");
        browser.findElement(By.name("charge")).sendKeys("3400");
        press(By.xpath("//button[text()='Note it']"));
        assertThat(browser.findElement(By.cssSelector(".done")).getText()).contains("put back after " + run);
        assertThat(desk.workshop()
                        .outings()
                        .find(NAME)
                        .outing()
                        .happened()
                        .get(0)
                        .putBackCoulombs())
                .isEqualTo(12_240);
    }

    @Test
    void aRefusedDayKeepsItsFormWithTheMessageAtItsField() throws IOException {
        Browser.resize(browser, 1200, 1400);
        browser.get(desk.url("/kit/add/outings"));
        browser.findElement(By.name("name")).sendKeys("Lake");
        browser.findElement(By.name("leaveHome")).sendKeys("09:00");
        browser.findElement(By.name("arrive")).sendKeys("08:00");
        browser.findElement(By.name("runs")).sendKeys("Harrier; 10:00 to 11:00");
        press(By.cssSelector("form.fields button.main"));
        assertThat(browser.findElement(By.id("h-arrive")).getText()).contains("not after home is left");
        assertThat(browser.findElement(By.id("h-runs")).getText()).contains("expected craft, times and run time");
        assertThat(browser.findElement(By.name("runs")).getAttribute("value")).isEqualTo("Harrier; 10:00 to 11:00");
        keepPicture("outing-form");
    }

    /** Taps the button of a run; of two forms for it the first counts. */
    private void tap(String action, String run) {
        press(By.xpath("//form[@action='" + action + "'][input[@value='" + run + "']]//button"));
    }

    /** Presses what leads to another page, and waits until that page is there. */
    private void press(By what) {
        WebElement pressed = browser.findElement(what);
        pressed.click();
        Browser.patience(browser, PATIENCE).until(ExpectedConditions.stalenessOf(pressed));
    }

    private void keepPicture(String name) throws IOException {
        String pictures = System.getenv("FETTLE_PICTURES");
        if (pictures != null) {
            Files.write(Path.of(pictures, name + ".png"), Browser.picture(browser));
        }
    }
}
