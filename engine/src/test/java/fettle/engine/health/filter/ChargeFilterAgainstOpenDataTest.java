package fettle.engine.health.filter;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.engine.health.identification.IdentifiedCell;
import fettle.engine.health.identification.MeasuredCell;
import fettle.engine.trace.Trace;
import fettle.engine.units.Estimate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Charge on measured drive profiles, Kollmeyer 2018, doi:10.17632/wykht8y7tg.1, against the count from a known start; circuit
 * from pulses and slow curve alone. Tolerance of the issue: started 20 % wrong, within 3 % after five minutes and ever after.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ChargeFilterAgainstOpenDataTest {
    /** Of each instance, not of the class: where the data is not here, the tests are skipped, not broken. */
    private final IdentifiedCell cell = MeasuredCell.fromPulses();

    private static final double SETTLED_SECONDS = 300;

    @ParameterizedTest
    @CsvSource({"us06_25C,-0.2", "us06_25C,0.2", "mixed1_25C,-0.2", "mixed1_25C,0.2"})
    void convergesInFiveMinutesAndStays(String profile, double wrongBy) {
        Trace trace = MeasuredCell.trace(profile);
        double start = start(profile, trace);
        ChargeFilter filter = ChargeFilter.starting(
                cell, FilterNoise.USUAL, new Estimate(start + wrongBy, Math.abs(wrongBy), List.of()));
        double counted = 0;
        double worst = 0;
        int compared = 0;
        for (int row = 0; row < trace.size(); row++) {
            counted += row == 0 ? 0 : count(trace, row);
            take(filter, trace, row, trace.packVolts()[row]);
            double truth = start - counted / cell.capacityCoulombs();
            if (trace.timeSeconds()[row] > SETTLED_SECONDS) {
                worst = Math.max(worst, Math.abs(filter.chargeFraction() - truth));
                compared++;
            }
            if (truth > 0.1) {
                assertThat(filter.alarms())
                        .as("alarm at %f s", trace.timeSeconds()[row])
                        .isFalse();
            }
        }
        assertThat(compared).isGreaterThan(40_000);
        assertThat(worst).isLessThanOrEqualTo(0.03);
    }

    @Test
    void soundsWhereResistanceDoubles() {
        Trace trace = MeasuredCell.trace("us06_25C");
        ChargeFilter filter =
                ChargeFilter.starting(cell, FilterNoise.USUAL, new Estimate(start("us06_25C", trace), 0.02, List.of()));
        double soundedAt = Double.NaN;
        for (int row = 0; row < trace.size() && Double.isNaN(soundedAt); row++) {
            boolean ill = trace.timeSeconds()[row] > 1500;
            take(filter, trace, row, trace.packVolts()[row] - (ill ? 0.06 * trace.currentAmps()[row] : 0));
            soundedAt = filter.alarms() ? trace.timeSeconds()[row] : Double.NaN;
        }
        assertThat(soundedAt).isBetween(1500.0, 1620.0);
    }

    private double start(String profile, Trace trace) {
        // us06 starts at rest; mixed1 is logged from the first loaded row of a full cell
        return profile.startsWith("us06") ? Math.min(1, cell.rest().charge(trace.packVolts()[0])) : 1;
    }

    private static double count(Trace trace, int row) {
        return 0.5
                * (trace.currentAmps()[row] + trace.currentAmps()[row - 1])
                * (trace.timeSeconds()[row] - trace.timeSeconds()[row - 1]);
    }

    private static void take(ChargeFilter filter, Trace trace, int row, double volts) {
        filter.take(trace.timeSeconds()[row], trace.currentAmps()[row], volts, trace.temperatureKelvins()[row]);
    }
}
