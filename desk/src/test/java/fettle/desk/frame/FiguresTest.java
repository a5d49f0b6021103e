package fettle.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.desk.ShelfFixtures;
import java.time.Clock;
import java.time.Duration;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class FiguresTest {
    private final Figures figures = new Figures(Clock.fixed(ShelfFixtures.NOW, ZoneId.of("Europe/Vienna")));

    @ParameterizedTest
    @CsvSource({"PT0S, now", "PT5M, in 5 min", "PT-3H, 3 h overdue", "PT47H59M, in 47 h", "P19D, in 19 d"})
    void tellsWhenSomethingIsDue(Duration left, String printed) {
        assertThat(figures.due(ShelfFixtures.NOW.plus(left))).isEqualTo(printed);
    }

    @Test
    void tellsDatesInTheReadersZoneWithTheYearWhereItIsAnother() {
        assertThat(figures.moment(ShelfFixtures.NOW)).isEqualTo("9 May 10:00");
        assertThat(figures.moment(ShelfFixtures.NOW.minus(Duration.ofDays(365))))
                .isEqualTo("9 May 2025 10:00");
    }

    @Test
    void saysWhatIsNotKnown() {
        assertThat(figures.due(null)).isEqualTo("when wanted");
        assertThat(figures.ago(null)).isEqualTo("never");
        assertThat(figures.moment(null)).isEqualTo("—");
    }

    @Test
    void endsNoLineInsideAFigure() {
        assertThat(Figures.unbroken("cell 3 falls behind by 32 mAh ± 2 mAh a month, at 20 °C"))
                .isEqualTo("cell 3 falls behind by 32\u00a0mAh\u00a0±\u00a02\u00a0mAh a month, at 20\u00a0°C");
    }
}
