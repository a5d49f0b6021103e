package fettle.desk.passport;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.desk.OpenDesk;
import fettle.desk.PdfText;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class PackPassportTest {
    private static final Pattern FIGURE = Pattern.compile("<dd>(.*?)(?:<small>.*?</small>)?</dd>", Pattern.DOTALL);
    private static final Pattern CELL = Pattern.compile("<td class=\"(?:when|sort)?\">(.*?)</td>", Pattern.DOTALL);

    @TempDir
    static Path folder;

    private static OpenDesk desk;

    @BeforeAll
    static void open() {
        desk = OpenDesk.ofTheClub(folder);
    }

    @AfterAll
    static void close() {
        desk.close();
    }

    @ParameterizedTest
    @ValueSource(strings = {"P02", "P03", "P09", "N01"})
    void everyFigureOfThePackPageStandsInPageAndPdf(String tag) throws Exception {
        String page = main(desk.get("/kit/packs/" + tag).body());
        String passport = plain(main(desk.get("/kit/packs/" + tag + "/passport").body()));
        byte[] pdf = pdf("/kit/packs/" + tag + "/passport.pdf");
        String printed = PdfText.of(pdf);

        List<String> figures =
                FIGURE.matcher(page).results().map(PackPassportTest::text).toList();
        assertThat(figures).hasSizeGreaterThan(8);
        // a value broken over lines stands between other columns: compared without spaces, in order of its words
        assertThat(figures).allSatisfy(figure -> {
            assertThat(passport).contains(figure);
            assertThat(inOrder(printed, figure)).as("%s in the PDF", figure).isTrue();
        });
        List<String> events =
                CELL.matcher(page).results().map(PackPassportTest::text).toList();
        assertThat(events).hasSizeGreaterThan(2);
        assertThat(events).allSatisfy(event -> assertThat(passport).contains(event));
        assertThat(PdfText.pages(pdf)).isGreaterThan(1);
        assertThat(printed).contains("Passport of pack " + tag, "page 1 of");
    }

    @Test
    void comesOnLetterPaperToo() throws Exception {
        var page = PdfText.page(pdf("/kit/packs/P02/passport.pdf?paper=letter"), 0);

        assertThat(page.getWidth() * 11.0 / page.getHeight()).isBetween(8.49, 8.51);
    }

    @Test
    void refusesAPackItDoesNotKnow() {
        assertThat(desk.get("/kit/packs/NONE/passport.pdf").statusCode()).isEqualTo(404);
    }

    private static boolean inOrder(String printed, String figure) {
        String words = List.of(figure.split(" ")).stream()
                .map(Pattern::quote)
                .reduce((a, b) -> a + ".{0,240}?" + b)
                .orElseThrow();
        return Pattern.compile(words).matcher(printed).find();
    }

    private static byte[] pdf(String path) throws IOException, InterruptedException {
        var answer = HttpClient.newHttpClient().send(desk.request(path).build(), BodyHandlers.ofByteArray());
        assertThat(answer.statusCode()).isEqualTo(200);
        return answer.body();
    }

    private static String main(String html) {
        return html.substring(html.indexOf("<main"), html.indexOf("</main>"));
    }

    private static String text(MatchResult found) {
        return plain(found.group(1));
    }

    private static String plain(String html) {
        return html.replaceAll("<[^>]*>", " ")
                .replace("&amp;", "&")
                .replace("&#39;", "'")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace('\u00a0', ' ')
                .replaceAll("\\s+", " ")
                .strip();
    }
}
