package fettle.planner.timer;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Generated seasons with known truth: each later run predicted from the earlier ones, at a stated risk of 5 %. */
final class TimerAccuracyTest {
    @Test
    void runsComeToTheLimitBeforeTheTimerAboutAsOftenAsStated() {
        TimerTrials.Outcome outcome = TimerTrials.of(40, 10, 3, false, false);
        assertThat(outcome.predictions()).isEqualTo(280);
        // over 200 seasons 4.9 %; of these 40 seasons up to two deviations of the count more
        assertThat(outcome.early()).isBetween(0.01, 0.09);
        assertThat(outcome.medianError()).isLessThan(0.1);
        assertThat(outcome.meanShare()).isGreaterThan(0.7);
    }

    @Test
    void aSingleEarlierRunIsOnTheCarefulSide() {
        TimerTrials.Outcome outcome = TimerTrials.of(30, 3, 1, false, false);
        assertThat(outcome.early()).isLessThan(0.05);
        assertThat(outcome.meanShare()).isBetween(0.45, 0.75);
    }
}
