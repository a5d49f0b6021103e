package fettle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.openqa.selenium.chrome.ChromeDriver;

/**
 * Holds a page against rules we did not write: axe-core 4.11, every rule that carries out a success criterion of the Web
 * Content Accessibility Guidelines 2.2, levels A and AA, and its own best practices.
 */
final class Accessibility {
    private static final String RULES = read("/axe.min.js");
    private static final String RUN = """
            const done = arguments[arguments.length - 1];
            axe.run().then(found => done(found.violations.map(
                rule => rule.id + ": " + rule.help + " at " + rule.nodes.map(node => node.html).join(" | ")).join("\\n")));
            """;

    private Accessibility() {}

    /** Fails with every rule the page breaks, and where. */
    static void check(ChromeDriver browser, String page) {
        browser.executeScript(RULES);
        assertThat((String) browser.executeAsyncScript(RUN))
                .as("accessibility of %s", page)
                .isEmpty();
    }

    private static String read(String resource) {
        try (InputStream stream = Accessibility.class.getResourceAsStream(resource)) {
            return new String(Objects.requireNonNull(stream, resource).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
