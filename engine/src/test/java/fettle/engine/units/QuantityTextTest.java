package fettle.engine.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class QuantityTextTest {
    @ParameterizedTest
    @CsvSource({
        "TEMPERATURE, 21C, 294.15",
        "TEMPERATURE, 21 °C, 294.15",
        "TEMPERATURE, 21 º C, 294.15",
        "TEMPERATURE, −5c, 268.15",
        "VOLTAGE, '3,84', 3.84",
        "VOLTAGE, '3,840V', 3.84",
        "VOLTAGE, .5 V, 0.5",
        "VOLTAGE, +3.84 volts, 3.84",
        "VOLTAGE, 3840mV, 3.84",
        "DURATION, 2h, 7200",
        "DURATION, 90min, 5400",
        "DURATION, '7,5 min', 450",
        "DURATION, 1h30, 5400",
        "DURATION, 1 h 30 min, 5400",
        "DURATION, 7min30s, 450",
        "DURATION, 1d, 86400",
        "DURATION, 1d12h, 129600",
        "RESISTANCE, 2.1mOhm, 0.0021",
        "RESISTANCE, 2.1mΩ, 0.0021",
        "RESISTANCE, 2.1 m\u2126, 0.0021",
        "RESISTANCE, 0.0021 ohm, 0.0021",
        "CHARGE, 5Ah, 18000",
        "CHARGE, 3100mAh, 11160",
        "MASS, 540g, 0.54",
        "CURRENT, 10A, 10",
        "RATE, 5C, 5",
        "FRACTION, 30%, 0.3",
        "FRACTION, 30 percent, 0.3"
    })
    void readsQuantitiesAsPeopleWriteThem(Measure measure, String written, double si) {
        assertThat(QuantityText.si(
                        "field", "it", written, measure, measure.units().get(0)))
                .isCloseTo(si, within(1e-12 * Math.abs(si)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "NaN",
                "Infinity",
                "-Infinity",
                "1e3",
                "0x10",
                "1e999",
                "",
                " ",
                "-",
                "--3",
                "3.8.4",
                "3,8,4",
                "1.234,5",
                "1,234.5",
                "3.84 3.83",
                "3.84 VV",
                "volts",
                "٣",
                "10A",
                "1234567890123",
                "2.",
                "3.84V;"
            })
    void refusesWhatIsNotOneNumberWithAUnit(String written) {
        assertThatThrownBy(() -> QuantityText.si("volts", "reading", written, Measure.VOLTAGE, TradeUnit.VOLT))
                .isInstanceOfSatisfying(
                        InputException.class,
                        refused -> assertThat(refused.faults())
                                .singleElement()
                                .extracting(Fault::field)
                                .isEqualTo("volts"))
                .hasMessageStartingWith("reading is ")
                .hasMessageContaining("V or mV");
    }

    @Test
    void refusesAbsurdLengthsWithoutRepeatingThem() {
        assertThatThrownBy(() -> QuantityText.si("volts", "reading", "3".repeat(5000), Measure.VOLTAGE, TradeUnit.VOLT))
                .isInstanceOf(InputException.class)
                .hasMessage("reading is 5000 characters long, at most 40 can be read. Write a number in V or mV.");
    }

    @Test
    void asksForTheUnitWhereABareNumberCouldBeSeveralThings() {
        assertThatThrownBy(() -> QuantityText.si("rest", "rest", "2", Measure.DURATION, null))
                .hasMessage("rest is \"2\", which has no unit. Write 2 s or 2 min or 2 h or 2 d.");
    }

    @Test
    void asksWhereACommaCouldMeanThousands() {
        assertThatThrownBy(() -> QuantityText.si(
                        "capacity", "capacity", "5,000 mAh", Measure.CHARGE, TradeUnit.MILLIAMPERE_HOUR))
                .hasMessage("capacity is \"5,000\", which can be read two ways. Write 5000 mAh or 5 mAh.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1h90", "30min1h", "1h1h", "1h30m20m", "1.5h30"})
    void refusesTimesWhosePartsDoNotFall(String written) {
        assertThatThrownBy(() -> QuantityText.si("rest", "rest", written, Measure.DURATION, null))
                .isInstanceOf(InputException.class);
    }
}
