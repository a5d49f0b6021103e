package fettle.engine.control.sweep;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * Binding points against the truth of generated sweeps (issue's goal: median ≤ 8 µs at 20 mA noise and 10 µs steps, false
 * bindings below 1 % on free servos). docs/accuracy.md has the longer run of {@link SweepTrials#main}.
 */
class SweepAccuracyTest {
    private static final long SEED = 20_261_125;

    @Test
    void findsBindingToEightMicrosecondsAtTwentyMilliampsOfNoise() {
        SweepTrials trials = new SweepTrials(0.020, 10, SEED).bound(200);

        assertThat(trials.medianMicros()).as("seed %d: %s", SEED, trials).isLessThan(8);
        assertThat(trials.quantile(0.95)).as("seed %d: %s", SEED, trials).isLessThan(20);
        assertThat(trials.missedShare()).as("seed %d: %s", SEED, trials).isLessThan(0.03);
    }

    @Test
    void statedSpreadCoversTheError() {
        SweepTrials trials = new SweepTrials(0.020, 25, SEED).bound(200);

        assertThat(trials.withinTwoDeviations()).as("seed %d: %s", SEED, trials).isGreaterThan(0.9);
    }

    @Test
    void freeServosSeldomSeemToBind() {
        SweepTrials trials = new SweepTrials(0.020, 10, SEED).free(600);

        assertThat(trials.falseShare()).as("seed %d: %s", SEED, trials).isLessThan(0.01);
    }
}
