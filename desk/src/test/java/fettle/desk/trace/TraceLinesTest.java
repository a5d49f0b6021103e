package fettle.desk.trace;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.engine.trace.Trace;
import java.util.Arrays;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

final class TraceLinesTest {
    private static final int SAMPLES = 10_000;

    /** Steady volts with one sample's dip and one sample's peak. */
    private static Trace spiked() {
        double[] time = new double[SAMPLES];
        double[] volts = new double[SAMPLES];
        double[] kelvins = new double[SAMPLES];
        for (int i = 0; i < SAMPLES; i++) {
            time[i] = i * 0.1;
            volts[i] = i == 4_321 ? 2.5 : i == 7_777 ? 4.4 : 3.8;
            kelvins[i] = i < 100 ? Double.NaN : 300;
        }
        return new Trace(time, volts, new double[0], new double[0][], kelvins, null);
    }

    @Test
    void losesNoExtremeHoweverFewPoints() {
        TraceLines lines = TraceLines.of(spiked(), null, 0, 999.9, 50);
        assertThat(lines.seconds()).hasSizeLessThanOrEqualTo(52).isSorted();
        assertThat(lines.lines().get(0).values()).contains(2.5, 4.4);
        assertThat(lines.lines()).extracting(TraceLines.Line::panel).containsExactly("pack", "temperature");
    }

    @Test
    void showsEverySampleOfAPartThatFits() {
        TraceLines lines = TraceLines.of(spiked(), null, 432, 432.5, 2_000);
        assertThat(lines.seconds()[0]).isLessThanOrEqualTo(432);
        assertThat(lines.seconds()[lines.seconds().length - 1]).isGreaterThanOrEqualTo(432.5);
        assertThat(lines.seconds()).hasSizeBetween(6, 9);
        assertThat(lines.lines().get(0).values()).contains(2.5);
    }

    @Test
    void leavesWhatWasNotLoggedEmptyAndTellsCelsius() {
        TraceLines lines = TraceLines.of(spiked(), null, 0, 20, 2_000);
        Double[] celsius = lines.lines().get(1).values();
        assertThat(celsius[0]).isNull();
        assertThat(Arrays.stream(celsius).filter(Objects::nonNull)).allMatch(value -> Math.abs(value - 26.85) < 1e-9);
        assertThat(Stream.of(celsius).filter(Objects::nonNull)).isNotEmpty();
    }
}
