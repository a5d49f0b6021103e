package fettle.engine.cell.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.cell.Chemistry;
import fettle.engine.cell.DefaultCurves;
import fettle.engine.cell.RestCurve;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class OpenCircuitTest {
    private static final OpenCircuit TABLE =
            OpenCircuit.of(new double[] {0, 0.2, 0.7, 1}, new double[] {3.0, 3.6, 3.8, 4.2});

    @ParameterizedTest
    @EnumSource(Chemistry.class)
    void piecesMissASmoothCurveByLessThanATenthOfAMillivolt(Chemistry chemistry) {
        RestCurve curve = DefaultCurves.of(chemistry);
        OpenCircuit pieces = OpenCircuit.of(curve);
        for (double charge = 0; charge <= 1; charge += 1e-4) {
            assertThat(pieces.volts(charge)).as("at %s", charge).isCloseTo(curve.volts(charge), within(1e-4));
        }
    }

    @Test
    void endSlopesContinue() {
        assertThat(TABLE.volts(1.1)).isCloseTo(4.2 + 0.1 * 0.4 / 0.3, within(1e-12));
        assertThat(TABLE.volts(-0.1)).isCloseTo(2.7, within(1e-12));
    }

    @Test
    void chargeIsTheInverseOfVolts() {
        for (double charge = -0.2; charge <= 1.2; charge += 0.01) {
            assertThat(TABLE.charge(TABLE.volts(charge))).isCloseTo(charge, within(1e-12));
        }
    }

    /** The mean over several pieces against many small trapezoids. */
    @Test
    void meanIsTheAreaOverTheWay() {
        double from = 0.85;
        double to = 0.05;
        int parts = 8000; // every row of the table is then an end of a part
        double sum = 0;
        for (int part = 0; part < parts; part++) {
            double start = from + (to - from) * part / parts;
            double end = from + (to - from) * (part + 1) / parts;
            sum += 0.5 * (TABLE.volts(start) + TABLE.volts(end)) / parts;
        }
        assertThat(TABLE.meanVolts(from, to)).isCloseTo(sum, within(1e-12));
        assertThat(TABLE.meanVolts(to, from)).isCloseTo(sum, within(1e-12));
        assertThat(TABLE.meanVolts(0.4, 0.4)).isEqualTo(TABLE.volts(0.4));
    }
}
