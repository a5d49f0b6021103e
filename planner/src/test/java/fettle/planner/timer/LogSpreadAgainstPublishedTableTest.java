package fettle.planner.timer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Quantiles of Student's t as every published table prints them to three decimals; laws of the sum of two doubts. */
final class LogSpreadAgainstPublishedTableTest {
    @Test
    void oneSidedFivePercentPointsAreThoseOfTheTables() {
        double[] degrees = {1, 2, 3, 4, 5, 10, 20, 30};
        double[] points = {6.314, 2.920, 2.353, 2.132, 2.015, 1.812, 1.725, 1.697};
        for (int i = 0; i < degrees.length; i++) {
            double below = Math.log(new LogSpread(0, 1, degrees[i]).quantile(0.05));
            assertThat(below).as("%s degrees", degrees[i]).isCloseTo(-points[i], within(0.0005));
        }
    }

    @Test
    void aPredictionIsWiderThanTheMeanByRootOnePlusOneOverN() {
        LogSpread spread = LogSpread.of(List.of(Math.exp(1), Math.exp(2), Math.exp(3)));
        assertThat(spread.meanLog()).isCloseTo(2, within(1e-12));
        assertThat(spread.scale()).isCloseTo(Math.sqrt(4.0 / 3), within(1e-12));
        assertThat(spread.degrees()).isEqualTo(2);
    }

    @Test
    void aKnownDoubtRaisesTheDegreesAndNothingAddsNothing() {
        LogSpread spread = new LogSpread(0, 1, 4);
        assertThat(spread.plus(1).degrees()).isEqualTo(16); // G.2b: (1 + 1)² / (1/4)
        assertThat(spread.plus(1).scale()).isCloseTo(Math.sqrt(2), within(1e-12));
        assertThat(spread.plus(0)).isEqualTo(spread);
    }

    @Test
    void runsAllAlikeLeaveThePacksDoubtAlone() {
        LogSpread sure = LogSpread.of(List.of(2.0, 2.0, 2.0)).plus(0.1);
        assertThat(Math.log(sure.quantile(0.05) / 2)).isCloseTo(-0.1 * 1.6449, within(1e-4));
    }
}
