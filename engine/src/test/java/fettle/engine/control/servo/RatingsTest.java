package fettle.engine.control.servo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import java.util.List;
import org.junit.jupiter.api.Test;

class RatingsTest {
    private final Ratings ratings = Servos.wing().ratings();

    @Test
    void keepsTheStatedFiguresAtTheStatedVoltages() {
        assertThat(kilogramCentimetres(4.8)).isCloseTo(5.0, within(1e-12));
        assertThat(kilogramCentimetres(6.0)).isCloseTo(6.0, within(1e-12));
        assertThat(kilogramCentimetres(7.4)).isCloseTo(7.0, within(1e-12));
    }

    @Test
    void takesAStraightLineBetweenTwoVoltages() {
        assertThat(kilogramCentimetres(5.4)).isCloseTo(5.5, within(1e-12));
        assertThat(ratings.at(6.7).stallAmps()).isCloseTo(2.1, within(1e-12));
    }

    @Test
    void guessesNothingBeyondTheData() {
        assertThatThrownBy(() -> ratings.at(4.5))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("4.50 V")
                .hasMessageContaining("4.80 V to 7.40 V");
        assertThatThrownBy(() -> ratings.at(8.4)).isInstanceOf(InputException.class);
    }

    @Test
    void oneLineAnswersForItsOwnVoltageAlone() {
        Ratings one = Servos.tail().ratings();
        assertThat(one.at(6.001).stallNewtonMetres()).isEqualTo(one.at(6.0).stallNewtonMetres());
        assertThat(one.covers(5.9)).isFalse();
    }

    @Test
    void leavesOutWhatANeighbourLacks() {
        Ratings gaps = new Ratings(
                List.of(new Rating(5, 0.5, null, null, 0.2, 1.0), new Rating(6, 0.6, 8.0, null, 0.3, null)));
        Rating between = gaps.at(5.5);
        assertThat(between.radiansPerSecond()).isNull();
        assertThat(between.movingAmps()).isCloseTo(0.25, within(1e-12));
        assertThat(between.stallAmps()).isNull();
    }

    @Test
    void refusesAVoltageStatedTwiceAndSwappedCurrents() {
        assertThatThrownBy(() -> new Ratings(List.of(
                        new Rating(6, 0.5, null, null, null, null), new Rating(6, 0.6, null, null, null, null))))
                .hasMessageContaining("6.00 V is stated twice");
        assertThatThrownBy(() -> new Rating(6, 0.5, null, 2.0, null, 0.1)).hasMessageContaining("swapped");
    }

    private double kilogramCentimetres(double volts) {
        return TradeUnit.KILOGRAM_FORCE_CENTIMETRE.fromSi(ratings.at(volts).stallNewtonMetres());
    }
}
