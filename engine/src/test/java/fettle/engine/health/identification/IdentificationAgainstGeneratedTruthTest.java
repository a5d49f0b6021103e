package fettle.engine.health.identification;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.engine.cell.Chemistry;
import fettle.engine.cell.DefaultCurves;
import fettle.engine.cell.RestCurve;
import fettle.engine.units.Estimate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Whether 95 % intervals hold the truth 95 times in a hundred, and the answers lean to neither side. */
class IdentificationAgainstGeneratedTruthTest {
    private static final RestCurve CURVE = DefaultCurves.of(Chemistry.LIPO);
    private static final double TWO_SIDED_95 = 1.96;
    private static final double BELIEF = 0.06; // ± of the capacity told to the estimator
    private static final int CELLS = 1000;

    @Test
    void intervalsOfOnePairCoverTheTruth() {
        holds(new GeneratedCell.Recipe(1, 2, 1500, 0.002, 0.0015, 4), PairCount.ONE, 20_260_101);
    }

    @Test
    void intervalsOfTwoPairsCoverTheTruth() {
        holds(new GeneratedCell.Recipe(2, 3, 1800, 0.002, 0.001, 2), PairCount.TWO, 20_260_102);
    }

    private static void holds(GeneratedCell.Recipe recipe, PairCount count, long seed) {
        Random random = new Random(seed);
        Map<String, Score> scores = new LinkedHashMap<>();
        for (int i = 0; i < CELLS; i++) {
            GeneratedCell cell = GeneratedCell.of(CURVE, recipe, random);
            double believed = cell.capacityCoulombs() * (1 + BELIEF * within(random));
            double start = cell.startCharge() + 0.1 * within(random);
            IdentifiedCircuit found = Identification.of(
                    cell.window(),
                    new CellBelief(
                            CURVE,
                            new Estimate(start, 0.1, List.of()),
                            new Estimate(believed, BELIEF * cell.capacityCoulombs(), List.of())),
                    count);
            score(scores, "R0", found.r0(), cell.r0());
            for (int pair = 0; pair < cell.ohms().length; pair++) {
                score(scores, "R" + (pair + 1), found.pairs().get(pair).ohms(), cell.ohms()[pair]);
                score(scores, "tau" + (pair + 1), found.pairs().get(pair).seconds(), cell.taus()[pair]);
            }
            score(scores, "start charge", found.startCharge(), cell.startCharge());
            score(scores, "capacity", found.capacityCoulombs(), cell.capacityCoulombs());
        }
        scores.forEach((name, score) -> {
            assertThat(score.coverage()).as("%s, seed %d", name, seed).isBetween(0.93, 0.97);
            assertThat(Math.abs(score.lean())).as("%s, seed %d", name, seed).isLessThan(0.2);
        });
    }

    /** A normal deviate no further out than two: nobody believes in a capacity of nothing. */
    private static double within(Random random) {
        return Math.max(-2, Math.min(2, random.nextGaussian()));
    }

    private static void score(Map<String, Score> scores, String name, Estimate found, double truth) {
        scores.computeIfAbsent(name, key -> new Score()).add(found, truth);
    }

    /** Tally of one parameter. */
    private static final class Score {
        private int count;
        private int inside;
        private double away;

        void add(Estimate found, double truth) {
            double deviations = (found.value() - truth) / found.standardDeviation();
            count++;
            inside += Math.abs(deviations) <= TWO_SIDED_95 ? 1 : 0;
            away += deviations;
        }

        double coverage() {
            return inside / (double) count;
        }

        /** Mean error over half the width of the interval. */
        double lean() {
            return away / count / TWO_SIDED_95;
        }
    }
}
