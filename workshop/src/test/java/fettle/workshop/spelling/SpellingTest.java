package fettle.workshop.spelling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpellingTest {
    @ParameterizedTest
    @CsvSource({
        "kitten, sitting, 3",
        "ca, ac, 1",
        "P07, p7, 1",
        "'', abc, 3",
        "same, SAME, 0",
        "ab, ba, 1",
        "ca, abc, 3"
    })
    void countsLettersAddedDroppedChangedOrSwapped(String from, String to, int edits) {
        assertThat(Spelling.edits(from, to)).isEqualTo(edits);
        assertThat(Spelling.edits(to, from)).isEqualTo(edits);
    }

    @Test
    void namesTheNearestFirstAndNoMoreThanAsked() {
        assertThat(Spelling.nearest("P7", List.of("P14", "Q77", "P07", "P17"), 3))
                .containsExactly("P07", "P17", "P14");
    }

    @ParameterizedTest
    @CsvSource({"swolen, swollen", "lef, left", "LEFTT, left", "xyz, ''", "fox, ''", "swing, ''"})
    void knowsWhichWordASlipMeant(String typed, String meant) {
        assertThat(Spelling.meant(typed, List.of("left", "swollen", "for", "in"))
                        .orElse(""))
                .isEqualTo(meant);
    }
}
