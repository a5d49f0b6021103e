package fettle.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Factors: NIST SP 811 (2008), Appendix B.8; worked by hand here. */
final class ReaderUnitsTest {
    private static final ReaderUnits OTHER =
            units(Map.of("temperature", "FAHRENHEIT", "length", "INCH", "torque", "NEWTON_METRE", "clock", "HOURS_12"));

    private static ReaderUnits units(Map<String, String> words) {
        return new ReaderUnits(Preferences.USUAL.with(words));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "at 21 °C;|at 69.8 °F;",
                "-10.0 °C|14.00 °F",
                "between 0 and 45 °C.|between 32.0 and 113.0 °F.",
                "5 to 45 °C|41.0 to 113.0 °F",
                "21.0 ± 0.5 °C|69.80 ± 0.90 °F",
                "warmer by 10 °C|warmer by 18.0 °F",
                "± 2 °C|± 3.6 °F",
                "arm 25.4 mm|arm 1.000 in",
                "63.5 × 38.1 mm|2.500 × 1.500 in",
                "10.0 kg·cm|0.981 N·m",
                "drawn 9 May 08:05, then 9 May 2025 18:30|drawn 9 May 8:05 am, then 9 May 2025 6:30 pm",
                "9 May 00:10|9 May 12:10 am",
                "wire of 5 mm², 3 °C/W, trace at 12:30|wire of 5 mm², 3 °C/W, trace at 12:30",
            })
    void writesFiguresInTheReadersUnits(String printed, String wanted) {
        assertThat(OTHER.text(printed)).isEqualTo(wanted);
    }

    @Test
    void leavesTagsFieldsCodeAndCitationsAlone() {
        String page = "<p title=\"21 °C\">21 °C <code>21 °C</code></p><cite>below 0 °C</cite><input value=\"21 °C\">"
                + "<svg role=\"img\" aria-label=\"at 21 °C\" width=\"3\"></svg><textarea>21 °C</textarea>";

        assertThat(OTHER.in(page))
                .isEqualTo(
                        "<p title=\"21 °C\">69.8 °F <code>21 °C</code></p><cite>below 0 °C</cite><input value=\"21 °C\">"
                                + "<svg role=\"img\" aria-label=\"at 69.8 °F\" width=\"3\"></svg><textarea>21 °C</textarea>");
    }

    @Test
    void leavesAPageAsItIsWhereNothingWasChosen() {
        String page = "<p>21 °C at 9 May 18:30</p>";

        assertThat(units(Map.of()).in(page)).isSameAs(page);
    }

    @Test
    void writesOunceInches() {
        assertThat(units(Map.of("torque", "OUNCE_FORCE_INCH")).text("10.0 kg·cm"))
                .isEqualTo("138.9 oz·in");
    }

    @Test
    void keepsChoicesInACookieAndIgnoresWhatIsNoChoice() {
        Preferences chosen = Preferences.USUAL.with(Map.of("theme", "DARK", "length", "INCH", "torque", "STONE"));

        assertThat(Preferences.of(chosen.cookie())).isEqualTo(chosen);
        assertThat(chosen.torque()).isEqualTo(Preferences.USUAL.torque());
        assertThat(Preferences.of("theme-<script>.x")).isEqualTo(Preferences.USUAL);
        assertThat(chosen.cookie()).matches("[A-Za-z0-9_.-]+");
    }
}
