package fettle.engine.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fettle.engine.units.InputException;
import org.junit.jupiter.api.Test;

final class TraceTest {
    private static final double[] NONE = {};

    @Test
    void refusesTimeThatStandsStill() {
        assertThatThrownBy(() -> Trace.of(new double[] {0, 1, 1}, new double[] {4, 4, 4}, NONE))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("time of sample 3 is 1.000 s");
    }

    @Test
    void refusesAColumnOfAnotherLengthAndAMissingCurrent() {
        assertThatThrownBy(() -> Trace.of(new double[] {0, 1}, new double[] {4}, NONE))
                .hasMessageContaining("packVolts has 1 values; expected none or one a sample, 2");
        assertThatThrownBy(() -> Trace.of(new double[] {0, 1}, NONE, new double[] {1, Double.NaN}))
                .hasMessageContaining("currentAmps holds a value that is not a number");
        assertThatThrownBy(() -> Trace.of(NONE, NONE, NONE)).hasMessageContaining("no samples");
    }

    @Test
    void partKeepsEveryColumnInStep() {
        Trace whole = new Trace(
                new double[] {0, 1, 2, 3},
                new double[] {8, 7, 6, 5},
                NONE,
                new double[][] {{4, 3, 2, 1}, {4, 4, 4, 4}},
                new double[] {290, 291, 292, 293},
                null);
        Trace part = whole.part(1, 3);
        assertThat(part.timeSeconds()).containsExactly(1, 2);
        assertThat(part.packVolts()).containsExactly(7, 6);
        assertThat(part.hasCurrent()).isFalse();
        assertThat(part.cellVolts()[0]).containsExactly(3, 2);
        assertThat(part.temperatureKelvins()).containsExactly(291, 292);
        assertThat(part.durationSeconds()).isEqualTo(1);
    }
}
