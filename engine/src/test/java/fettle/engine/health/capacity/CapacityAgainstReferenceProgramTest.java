package fettle.engine.health.capacity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.units.TradeUnit;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The worked case of battery/capacity-estimation.md: formulas re-derived and checked there by finite differences, and
 * scipy.odr 's orthogonal distance regression on the same pairs. Tolerances are the digits printed.
 */
class CapacityAgainstReferenceProgramTest {
    private static final double WEIGHT_ONE = 1;
    private static final double SCALE_PER_COULOMB = 1.2 / 3600;

    @Test
    void weightedTotalLeastSquaresMeetsTheWorkedCaseAndOrthogonalDistanceRegression() {
        TotalLeastSquares fit = TotalLeastSquares.fit(WorkedCase.pairs().stream()
                .map(pair -> new Weighted(pair, WEIGHT_ONE))
                .toList());

        assertThat(TradeUnit.AMPERE_HOUR.fromSi(fit.capacityCoulombs())).isCloseTo(2.0018263, within(5e-8));
        assertThat(TradeUnit.AMPERE_HOUR.fromSi(fit.standardDeviation())).isCloseTo(0.014931, within(5e-7));
        assertThat(fit.chiSquared()).isCloseTo(8.01707, within(5e-6));
    }

    @Test
    void recursionMeetsTheWorkedCaseAfterEachPair() {
        int[] after = {1, 2, 3, 4, 6, 8, 10, 12};
        double[] capacity = {2.076047, 2.043214, 2.005788, 2.012873, 2.013513, 2.012848, 2.008034, 2.003546};
        double[] deviation = {0.044966, 0.035134, 0.025351, 0.024321, 0.020564, 0.019058, 0.015736, 0.014561};
        for (int row = 0; row < after.length; row++) {
            CapacityRecursion recursion = run(WorkedCase.pairs().subList(0, after[row]), 1);
            assertThat(TradeUnit.AMPERE_HOUR.fromSi(recursion.capacityCoulombs()))
                    .as("capacity after %d pairs", after[row])
                    .isCloseTo(capacity[row], within(6e-7));
            assertThat(TradeUnit.AMPERE_HOUR.fromSi(recursion.standardDeviation()))
                    .as("deviation after %d pairs", after[row])
                    .isCloseTo(deviation[row], within(6e-7));
        }
    }

    @Test
    void sumsMeetTheWorkedCase() {
        CapacityRecursion last = run(WorkedCase.pairs(), 1);
        assertThat(List.of(last.c1(), last.c2(), last.c3(), last.c4(), last.c5(), last.c6()))
                .usingElementComparator((a, b) -> Math.abs(a - b) < 6e-5 ? 0 : Double.compare(a, b))
                .containsExactly(22825.3435, 55161.5214, 133471.7152, 22015.0082, 52844.7320, 126900.3119);
    }

    @Test
    void fadingMemoryMeetsTheWorkedCase() {
        CapacityRecursion last = run(WorkedCase.pairs(), 0.95);
        assertThat(TradeUnit.AMPERE_HOUR.fromSi(last.capacityCoulombs())).isCloseTo(2.000840, within(6e-7));
        assertThat(TradeUnit.AMPERE_HOUR.fromSi(last.standardDeviation())).isCloseTo(0.016649, within(6e-7));
    }

    private static CapacityRecursion run(List<CapacityPair> pairs, double memory) {
        CapacityRecursion recursion = CapacityRecursion.starting(SCALE_PER_COULOMB, memory);
        for (CapacityPair pair : pairs) {
            recursion = recursion.plus(pair);
        }
        return recursion;
    }
}
