package fettle.engine.health.identification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.cell.Chemistry;
import fettle.engine.cell.DefaultCurves;
import fettle.engine.cell.RestCurve;
import fettle.engine.units.Estimate;
import fettle.engine.units.InputException;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class IdentificationTest {
    private static final RestCurve CURVE = DefaultCurves.of(Chemistry.LIPO);

    @Test
    void spikesHardlyMoveTheAnswerAndAreCounted() {
        GeneratedCell cell = cell(11);
        double[] volts = new double[cell.window().rows()];
        for (int row = 0; row < volts.length; row++) {
            volts[row] = cell.window().volts(row) - (row % 97 == 50 ? 0.8 : 0);
        }
        IdentifiedCircuit clean = find(cell, cell.window(), PairCount.ONE);
        IdentifiedCircuit spiked = find(cell, window(cell, volts, 0), PairCount.ONE);
        assertThat(spiked.spikes()).isBetween(volts.length / 97, volts.length / 97 + 8);
        assertThat(spiked.r0().value())
                .isCloseTo(clean.r0().value(), within(2 * clean.r0().standardDeviation()));
    }

    @Test
    void delayBetweenVoltsAndAmpsIsFound() {
        GeneratedCell cell = cell(12);
        int late = 2;
        double[] volts = new double[cell.window().rows()];
        for (int row = 0; row < volts.length; row++) {
            volts[row] = cell.window().volts(Math.max(0, row - late));
        }
        IdentifiedCircuit found = find(cell, window(cell, volts, 0), PairCount.ONE);
        assertThat(found.delaySeconds().value()).isCloseTo(0.2, within(0.02));
        assertThat(found.r0().value())
                .isCloseTo(cell.r0(), within(4 * found.r0().standardDeviation()));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 2, 10, 50, 100})
    void anyRateFromOneToAHundredHertzFindsTheTruth(double hertz) {
        GeneratedCell cell =
                GeneratedCell.of(CURVE, new GeneratedCell.Recipe(1, hertz, 900, 0.002, 0.001, 2), new Random(21));
        IdentifiedCircuit found = find(cell, cell.window(), PairCount.ONE);
        near(found.r0(), cell.r0());
        near(found.pairs().get(0).ohms(), cell.ohms()[0]);
        near(found.pairs().get(0).seconds(), cell.taus()[0]);
    }

    /** Within four of its own deviations, and those below a sixth of it. */
    private static void near(Estimate found, double truth) {
        assertThat(found.value()).isCloseTo(truth, within(4 * found.standardDeviation()));
        assertThat(found.standardDeviation()).isLessThan(truth / 6);
    }

    /** Of one pair there is nothing a second could tell: whatever becomes of it, there is an answer, and R0 is still right. */
    @Test
    void aPairThatIsNotThereDoesNoHarm() {
        for (long seed = 31; seed < 56; seed++) {
            GeneratedCell cell = cell(seed);
            IdentifiedCircuit found = find(cell, cell.window(), PairCount.TWO);
            assertThat(found.r0().value()).as("seed %d", seed).isCloseTo(cell.r0(), within(0.15 * cell.r0()));
        }
    }

    @Test
    void noStepTakesAPairOutOfWhatTheWindowCanShow() {
        CircuitPoint point = new CircuitPoint(new double[] {0.01, 0.01}, new double[] {1}, 0.5, 9, 0);
        CircuitPoint moved = point.towards(new double[] {-1, 0, 100, 0, 0}, -1, 7);
        assertThat(moved.logTau()[0]).isEqualTo(7);
        assertThat(moved.ohms()[0]).isCloseTo(0.001, within(1e-12));
    }

    @Test
    void windowTooShortForTheSlowPairIsSaid() {
        GeneratedCell cell = cell(13);
        int loaded = 0;
        while (cell.window().amps(loaded) == 0) {
            loaded++;
        }
        LoadWindow shortened = cell.window().part(loaded - 100, loaded + 250); // 35 s, with a pair of 25 to 80 s
        IdentifiedCircuit found = find(cell, shortened, PairCount.ONE);
        assertThat(found.doubts()).isNotEmpty();
        assertThat(found.doubts().get(0)).containsAnyOf("too short", "hardly excites");
    }

    @Test
    void steadyCurrentIsRefusedWithWhatIsNeeded() {
        GeneratedCell cell = cell(14);
        double[] seconds = new double[200];
        double[] amps = new double[200];
        double[] volts = new double[200];
        Arrays.setAll(seconds, row -> row * 0.1);
        Arrays.fill(amps, 2);
        Arrays.setAll(volts, row -> 3.8 - 1e-5 * row);
        LoadWindow steady = LoadWindow.of(seconds, amps, volts, 298.15);
        assertThatThrownBy(() -> find(cell, steady, PairCount.ONE))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("Take a stretch where the load changes");
    }

    @Test
    void wrongSignOfCurrentIsSaid() {
        GeneratedCell cell = cell(15);
        LoadWindow window = cell.window();
        double[] seconds = new double[window.rows()];
        double[] amps = new double[window.rows()];
        double[] volts = new double[window.rows()];
        for (int row = 0; row < amps.length; row++) {
            seconds[row] = window.seconds(row);
            amps[row] = -window.amps(row);
            volts[row] = window.volts(row);
        }
        LoadWindow turned = LoadWindow.of(seconds, amps, volts, 298.15);
        assertThatThrownBy(() -> find(cell, turned, PairCount.ONE))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("sign of the current");
    }

    private static GeneratedCell cell(long seed) {
        return GeneratedCell.of(CURVE, new GeneratedCell.Recipe(1, 10, 600, 0.002, 0.001, 2), new Random(seed));
    }

    private static LoadWindow window(GeneratedCell cell, double[] volts, int from) {
        double[] seconds = new double[volts.length];
        double[] amps = new double[volts.length];
        for (int row = from; row < volts.length; row++) {
            seconds[row] = cell.window().seconds(row);
            amps[row] = cell.window().amps(row);
        }
        return LoadWindow.of(seconds, amps, volts, cell.window().kelvins());
    }

    private static IdentifiedCircuit find(GeneratedCell cell, LoadWindow window, PairCount count) {
        CellBelief belief = new CellBelief(
                CURVE,
                new Estimate(cell.startCharge(), 0.02, List.of()),
                new Estimate(cell.capacityCoulombs(), 0.05 * cell.capacityCoulombs(), List.of()));
        return Identification.of(window, belief, count);
    }
}
