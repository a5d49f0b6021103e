package fettle.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.ExpectedConditions;

/**
 * Draws the pictures of the documentation from the demo club's book. Its name keeps it out of ordinary test runs; ask for
 * it as {@code docs/pictures/README.md} says.
 */
final class DocumentationPictures {
    private static final Path PICTURES = Path.of(System.getProperty("fettle.pictures", "../docs/pictures"));
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    @TempDir
    Path folder;

    private ChromeDriver browser;
    private OpenDesk desk;

    @BeforeEach
    void open() {
        browser = Browser.open(folder.resolve("profile"));
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
    void drawsTheClubsBook() throws IOException {
        desk = OpenDesk.ofTheClub(folder);
        Browser.resize(browser, 1280, 900);
        draw("kit", "/kit");
        draw("pack", "/kit/packs/P02");
        draw("rules", "/kit/rules?chemistry=LiPo");
        draw("journal", "/journal");
        draw("labels", "/kit/labels?pack=P01&pack=P02&pack=P08&sheet=a4-105x74");
        browser.get(desk.url("/checks"));
        browser.findElement(By.id("every")).sendKeys("21C rest 2h");
        browser.findElement(By.id("sheet-rows")).sendKeys("P01 3.84 3.83 3.85 3.84\nP02 3.84 38.3 3.85 3.84\n");
        Browser.patience(browser, PATIENCE)
                .until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector("#rows .problems")));
        keep("shelf");
        Browser.resize(browser, 1280, 1250);
        draw(
                "linkage",
                "/setups/linkage?arm=10&horn=14&aft=120&above=-8&chord=45&low=1120&high=1880&pulse=1700&speed=35&torque=5.6"
                        + "&craft=Harrier&surface=left%20aileron");
        Browser.resize(browser, 1280, 1150);
        draw("outing", "/outings/day?name=Club%20day%20at%20the%20airstrip");
        Browser.resize(browser, 1440, 960);
        draw("today", "/");
        Browser.resize(browser, 360, 740);
        draw("phone-outing", "/outings/now?name=Club%20day%20at%20the%20airstrip");
        draw("phone-today", "/");
        draw("phone-pack", "/kit/packs/P09");
    }

    @Test
    void drawsAMistakeInTheEntryLine() throws IOException {
        desk = OpenDesk.ofTheClub(folder);
        Browser.resize(browser, 1280, 420);
        browser.get(desk.url("/kit/packs/P01"));
        browser.findElement(By.id("line")).sendKeys("P01 3.84 3.83 38.5 3.84 21C rest 2h");
        Browser.patience(browser, PATIENCE)
                .until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector("#reading .problems")));
        keep("entry-mistake");
    }

    @Test
    void drawsANewBook() throws IOException {
        desk = OpenDesk.empty(folder);
        Browser.resize(browser, 1280, 560);
        draw("new-book", "/");
        Browser.resize(browser, 1280, 900);
        draw("add-pack", "/kit/add/packs");
    }

    private void draw(String name, String page) throws IOException {
        browser.get(desk.url(page));
        keep(name);
    }

    private void keep(String name) throws IOException {
        Files.createDirectories(PICTURES);
        Files.write(PICTURES.resolve(name + ".png"), Browser.picture(browser));
    }
}
