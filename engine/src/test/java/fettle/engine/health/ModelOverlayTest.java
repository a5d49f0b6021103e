package fettle.engine.health;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.cell.Chemistry;
import fettle.engine.cell.DefaultCurves;
import fettle.engine.cell.RestCurve;
import fettle.engine.pack.Packs;
import fettle.engine.trace.Trace;
import java.util.Random;
import org.junit.jupiter.api.Test;

final class ModelOverlayTest {
    private static final RestCurve CURVE = DefaultCurves.of(Chemistry.LIPO);
    private static final double R0 = 0.006;
    private static final double R1 = 0.004;
    private static final double TAU = 12;
    private static final double NOISE = 0.002;

    /** Four equal cells, two minutes of rest, ten of steps, two of rest; the pair is stepped exactly. */
    private static Trace trace() {
        Random random = new Random(7);
        int size = 1680;
        double[] time = new double[size];
        double[] volts = new double[size];
        double[] amps = new double[size];
        double x = 0;
        double counted = 0;
        for (int i = 0; i < size; i++) {
            time[i] = 0.5 * i;
            amps[i] = i >= 240 && i < 1440 ? 10 + 25 * (i / 12 % 3) : 0;
            if (i > 0) {
                x += (amps[i - 1] - x) * (1 - Math.exp(-0.5 / TAU));
                counted += 0.25 * (amps[i - 1] + amps[i]);
            }
            double cell = CURVE.volts(0.95 - counted / 18_000) - R0 * amps[i] - R1 * x;
            volts[i] = 4 * cell + NOISE * random.nextGaussian();
        }
        return Trace.of(time, volts, amps);
    }

    @Test
    void liesOnTheLoggedVoltsWithinTheirScatterAndOnlyInTheRun() {
        Trace trace = trace();
        TraceHealth health = TraceHealth.of(trace, Packs.lipo(4, 5000));
        ModelOverlay overlay =
                ModelOverlay.of(trace, Packs.lipo(4, 5000), health).orElseThrow();
        assertThat(overlay.volts()[100]).isNaN();
        assertThat(overlay.volts()[1500]).isNaN();
        double squares = 0;
        for (int i = 240; i < 1440; i++) {
            assertThat(overlay.volts()[i] + overlay.residualVolts()[i]).isCloseTo(trace.packVolts()[i], within(1e-9));
            squares += overlay.residualVolts()[i] * overlay.residualVolts()[i];
        }
        assertThat(Math.sqrt(squares / 1200)).as("rms residual").isBetween(0.5 * NOISE, 0.02);
    }

    @Test
    void saysNothingWhereNothingWasIdentified() {
        Trace trace = trace();
        Trace still =
                new Trace(trace.timeSeconds(), trace.packVolts(), new double[0], new double[0][], new double[0], null);
        TraceHealth none = TraceHealth.of(still, Packs.lipo(4, 5000));
        assertThat(ModelOverlay.of(still, Packs.lipo(4, 5000), none)).isEmpty();
    }
}
