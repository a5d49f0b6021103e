package fettle.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.junit.jupiter.api.Test;

final class AssetsTest {
    /** A browser drops everything behind a block left open without a word, so pages would only look odd. */
    @Test
    void theStyleSheetNestsNoRuleInARuleAndClosesEveryBlock() throws IOException {
        int depth = 0;
        for (char letter : style().toCharArray()) {
            depth += letter == '{' ? 1 : letter == '}' ? -1 : 0;
            assertThat(depth).isBetween(0, 2);
        }
        assertThat(depth).isZero();
    }

    private static String style() throws IOException {
        try (InputStream file = AssetsTest.class.getResourceAsStream("/fettle/desk/assets/desk.css")) {
            return new String(Objects.requireNonNull(file, "desk.css").readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
