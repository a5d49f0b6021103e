package fettle.engine.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

final class RestSearchTest {
    /** Two minutes of rest at falling volts, a minute of run, half a minute of rest. */
    private static Trace trace(double[][] cells) {
        int size = 210;
        double[] time = new double[size];
        double[] volts = new double[size];
        double[] amps = new double[size];
        for (int i = 0; i < size; i++) {
            time[i] = i;
            volts[i] = i < 120 ? 16 - 0.001 * i : 14;
            amps[i] = i >= 120 && i < 180 ? 30 : 0;
        }
        return new Trace(time, volts, amps, cells, new double[0], null);
    }

    @Test
    void readsTheEndOfALongRestAndNoShortOne() {
        Trace trace = trace(new double[0][]);
        List<TraceRest> rests = RestSearch.of(trace, Segmentation.of(trace), 4);
        assertThat(rests).singleElement().satisfies(rest -> {
            assertThat(rest.cell()).isZero();
            assertThat(rest.restedSeconds()).isBetween(115.0, 121.0);
            assertThat(rest.volts()).isCloseTo((16 - 0.001 * (rest.atSeconds() - 5)) / 4, within(1e-9));
            assertThat(rest.kelvins()).isNull();
        });
    }

    @Test
    void readsEachLoggedCellAndLeavesOutTheOneThatWasNot() {
        double[] there = new double[210];
        double[] gone = new double[210];
        Arrays.fill(there, 4.0);
        Arrays.fill(gone, Double.NaN);
        Trace trace = trace(new double[][] {there, gone});
        assertThat(RestSearch.of(trace, Segmentation.of(trace), 2))
                .extracting(TraceRest::cell)
                .containsExactly(1);
    }
}
