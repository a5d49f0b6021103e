package fettle.engine.cell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.units.InputException;
import fettle.engine.working.Citation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RestCurveLawsTest {
    @ParameterizedTest
    @EnumSource(Chemistry.class)
    void risesEverywhereAndInvertsItself(Chemistry chemistry) {
        RestCurve curve = DefaultCurves.of(chemistry);
        double before = curve.volts(-0.1);
        for (int step = -99; step <= 1100; step++) {
            double charge = step / 1000.0;
            double volts = curve.volts(charge);
            assertThat(volts).as("volts at charge %s", charge).isGreaterThan(before);
            assertThat(curve.charge(volts)).isCloseTo(charge, within(1e-9));
            before = volts;
        }
    }

    @ParameterizedTest
    @EnumSource(Chemistry.class)
    void slopeIsTheDerivativeOfVolts(Chemistry chemistry) {
        RestCurve curve = DefaultCurves.of(chemistry);
        for (int step = 1; step < 997; step++) {
            double charge = step / 997.0;
            double numeric = (curve.volts(charge + 1e-7) - curve.volts(charge - 1e-7)) / 2e-7;
            assertThat(curve.slopeVolts(charge)).isCloseTo(numeric, within(1e-4 * Math.max(1, numeric)));
        }
    }

    @Test
    void refusesATableThatDoesNotRiseAndNamesTheRow() {
        assertThatThrownBy(() -> RestCurve.of(
                        new double[] {0, 0.5, 1},
                        new double[] {3, 3.8, 3.8},
                        new double[3],
                        Citation.commonPractice("")))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("row 3");
    }
}
