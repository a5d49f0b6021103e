package fettle.engine.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.reference.ReferenceFiles;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Factors against NIST SP 811 (2008), Appendix B, and against exact fractions of the defined values. */
final class TradeUnitAgainstPublishedTableTest {
    private static final Map<String, TradeUnit> UNIT_OF = Map.of(
            "ounce-force inch,N m", TradeUnit.OUNCE_FORCE_INCH,
            "kilogram-force centimetre,N m", TradeUnit.KILOGRAM_FORCE_CENTIMETRE,
            "ounce (avoirdupois),kg", TradeUnit.OUNCE,
            "inch,m", TradeUnit.INCH,
            "foot,m", TradeUnit.FOOT,
            "mile per hour,m/s", TradeUnit.MILE_PER_HOUR,
            "knot,m/s", TradeUnit.KNOT,
            "kilometre per hour,m/s", TradeUnit.KILOMETRE_PER_HOUR,
            "watt hour,J", TradeUnit.WATT_HOUR,
            "ampere hour,C", TradeUnit.AMPERE_HOUR);

    /** Printed factors; the tolerance is half a unit of the last digit printed. */
    @ParameterizedTest
    @CsvSource({
        "OUNCE_FORCE_INCH, 7.061552E-3, 5E-10",
        "OUNCE, 2.834952E-2, 5E-9",
        "INCH, 2.54E-2, 1E-18",
        "WATT_HOUR, 3.6E3, 1E-12",
        "AMPERE_HOUR, 3.6E3, 1E-12",
        "MINUTE, 60, 1E-15",
        "HOUR, 3600, 1E-12",
        "DAY, 8.64E4, 1E-12"
    })
    void factorsAreThoseOfNistSp811AppendixB(TradeUnit unit, double factor, double tolerance) {
        assertThat(unit.toSi(1)).isCloseTo(factor, within(tolerance));
    }

    /** The defining relations: t/°C = T/K − 273.15 and t/°F = 1.8 t/°C + 32. */
    @ParameterizedTest
    @CsvSource({
        "0, 273.15, 32",
        "20, 293.15, 68",
        "25, 298.15, 77",
        "45, 318.15, 113",
        "-40, 233.15, -40",
        "100, 373.15, 212"
    })
    void temperaturesAgreeWithTheDefiningRelations(double celsius, double kelvins, double fahrenheit) {
        assertThat(TradeUnit.CELSIUS.toSi(celsius)).isCloseTo(kelvins, within(1e-12));
        assertThat(TradeUnit.FAHRENHEIT.toSi(fahrenheit)).isCloseTo(kelvins, within(1e-9));
        assertThat(TradeUnit.FAHRENHEIT.fromSi(kelvins)).isCloseTo(fahrenheit, within(1e-9));
    }

    @Test
    void factorsAgreeWithTheExactFractionsInTheReferenceFolder() {
        List<String> rows = ReferenceFiles.lines("standards/units.csv");
        int compared = 0;
        for (String row : rows) {
            String[] cells = row.split(",");
            Optional<TradeUnit> unit = Optional.ofNullable(UNIT_OF.get(cells[0] + "," + cells[1]));
            if (unit.isPresent()) {
                double factor = Double.parseDouble(cells[2]);
                assertThat(unit.get().toSi(1)).as(row).isCloseTo(factor, within(1e-14 * factor));
                compared++;
            }
        }
        assertThat(compared).isEqualTo(UNIT_OF.size());
    }

    @Test
    void temperaturesAgreeWithTheReferenceFolder() {
        List<String> rows = ReferenceFiles.lines("standards/temperature_cases.csv");
        for (String row : rows.subList(1, rows.size())) {
            String[] cells = row.split(",");
            double kelvins = Double.parseDouble(cells[1]);
            assertThat(TradeUnit.CELSIUS.toSi(Double.parseDouble(cells[0])))
                    .as(row)
                    .isCloseTo(kelvins, within(1e-12));
            assertThat(TradeUnit.FAHRENHEIT.toSi(Double.parseDouble(cells[2])))
                    .as(row)
                    .isCloseTo(kelvins, within(1e-9));
        }
        assertThat(rows.size()).isGreaterThan(5);
    }
}
