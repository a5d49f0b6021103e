package fettle.engine.health.identification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.units.Estimate;
import fettle.engine.units.InputException;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A cell of two resistances, conduction and charge transfer, each with its own activation energy as published parameter sets have them
 * (battery/thermal-and-ageing.md: exchange currents 35 to 47 kJ/mol), seen at 0 and 25 °C alone.
 */
class TemperatureLawTest {
    private static final double GAS_CONSTANT = 8.314462618;
    private static final double WARM = 298.15;
    private static final double COLD = 273.15;

    private record TwoInOne(double transferShare, double conduction, double transfer) {
        double ohms(double kelvins) {
            return 0.03
                    * ((1 - transferShare) * factor(conduction, kelvins) + transferShare * factor(transfer, kelvins));
        }

        private static double factor(double activation, double kelvins) {
            return Math.exp(activation / GAS_CONSTANT * (1 / kelvins - 1 / WARM));
        }
    }

    @Test
    void lawOfTwoTemperaturesPredictsOthersWithinItsInterval() {
        for (double share : new double[] {0.17, 0.25, 0.33}) {
            for (double conduction : new double[] {10_000, 14_600}) {
                for (double transfer : new double[] {35_000, 40_000, 46_700}) {
                    holds(new TwoInOne(share, conduction, transfer));
                }
            }
        }
    }

    private static void holds(TwoInOne cell) {
        TemperatureLaw law = TemperatureLaw.through(List.of(
                new TemperatureLaw.Reading(1, COLD, cell.ohms(COLD)),
                new TemperatureLaw.Reading(1, WARM, cell.ohms(WARM))));
        Estimate warm = new Estimate(cell.ohms(WARM), 0, List.of());
        for (double celsius : new double[] {-20, -10, 10, 40}) {
            double kelvins = 273.15 + celsius;
            Estimate told = law.at(kelvins, warm, WARM);
            assertThat(told.value())
                    .as("%s at %f °C", cell, celsius)
                    .isCloseTo(cell.ohms(kelvins), within(2 * told.standardDeviation()));
        }
        assertThat(law.at(283.15, warm, WARM).value()).isCloseTo(cell.ohms(283.15), within(0.03 * cell.ohms(283.15)));
        assertThat(law.at(COLD, warm, WARM).value()).isCloseTo(cell.ohms(COLD), within(1e-9));
    }

    @Test
    void oneTemperatureIsNoLaw() {
        assertThatThrownBy(() -> TemperatureLaw.through(
                        List.of(new TemperatureLaw.Reading(1, WARM, 0.03), new TemperatureLaw.Reading(2, WARM, 0.04))))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("colder or warmer day");
    }
}
