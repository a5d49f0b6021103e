package fettle.planner.timer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.model.Doubt;
import fettle.engine.pack.model.PackModel;
import fettle.engine.rule.Limits;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.RuleSet;
import fettle.engine.trace.Trace;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Timers predicted on measured records: drive profiles of an 18650 cell (Kollmeyer 2018, doi:10.17632/wykht8y7tg.1) and flights
 * of a one-cell craft (Craciun and Burlacu 2025), both in the reference folder.
 */
final class TimerAgainstOpenDataTest {
    private static final Limits LIMITS = RuleSet.of(List.of()).limitsFor(Chemistry.LI_ION, null, List.of());
    private static final double CAPACITY = TradeUnit.AMPERE_HOUR.toSi(2.9); // its label
    private static final double STEP_OHMS = 0.0322; // 5.8 A pulses at 1 s, hppc_25C_pulses_timed.csv
    private static final String FOLDER = "battery/panasonic-18650pf/";

    @Test
    void theTimeOfADriveProfileIsPredictedWithItsOwnCurrentAndFromItsFirstThird() {
        List<String> names = List.of("us06_25C", "mixed1_25C");
        double[] byOwn = {0.06, 0.06};
        double[] byThird = {0.08, 0.25}; // the mixed profile begins gently: its first third is not the rest of it
        for (int i = 0; i < names.size(); i++) {
            Trace whole = MeasuredRecord.read(FOLDER + names.get(i) + ".csv.gz", true);
            double truth = secondsToLimit(whole);
            int end = 0;
            while (whole.timeSeconds()[end] - whole.timeSeconds()[0] < truth) {
                end++;
            }
            TimerAnswer own = answer(whole.part(0, end + 1));
            TimerAnswer third = answer(whole.part(0, whole.size() / 3));
            assertThat(own.typicalSeconds().value()).as(names.get(i)).isCloseTo(truth, within(byOwn[i] * truth));
            assertThat(third.typicalSeconds().value()).as(names.get(i)).isCloseTo(truth, within(byThird[i] * truth));
            assertThat((double) third.settingSeconds()).as(names.get(i)).isLessThan(truth);
        }
    }

    private static TimerAnswer answer(Trace run) {
        return TimerAnswer.of(new TimerQuestion(cell(), LIMITS, List.of(RunDemand.ofTrace(run)), null, 0.05));
    }

    @Test
    void stretchesOfTheProfilesExceedTheStatedRiskNoMoreThanChanceAllows() {
        int predicted = 0;
        int early = 0;
        for (String name : List.of("us06_25C", "mixed1_25C")) {
            Trace whole = MeasuredRecord.read(FOLDER + name + ".csv.gz", true);
            List<Double> amps = stretches(whole, 240);
            for (int run = 3; run < amps.size(); run++) {
                predicted++;
                early += amps.get(run) > LogSpread.of(amps.subList(0, run)).quantile(0.95) ? 1 : 0;
            }
        }
        assertThat(predicted).isGreaterThan(30);
        assertThat(early / (double) predicted).isLessThan(0.12);
    }

    @Test
    void flightsWithoutCurrentSetATimerByTheirVolts() {
        List<Trace> flights = new ArrayList<>();
        for (int flight : new int[] {1, 11, 47}) {
            flights.add(MeasuredRecord.read("battery/flights-1s-voltage/flight_" + flight + ".csv", false));
        }
        VoltsTimer all = VoltsTimer.of(flights, 3.1, 0.05);
        // lowest smoothed volts by the source's full-rate files: 3.029, 3.087 and 3.337 V
        assertThat(all.reached()).isEqualTo(2);
        assertThat(VoltsTimer.of(flights, 3.0, 0.05).reached()).isZero();
        assertThat((double) all.settingSeconds())
                .isLessThan(all.times().stream()
                        .mapToDouble(Double::doubleValue)
                        .min()
                        .orElseThrow());
        for (int kept = 0; kept < flights.size(); kept++) {
            List<Trace> others = new ArrayList<>(flights);
            others.remove(kept);
            VoltsTimer timer = VoltsTimer.of(others, 3.1, 0.05);
        }
    }

    private static PackModel cell() {
        return PackModel.uniform("cell", Chemistry.LI_ION, 1, CAPACITY, 1, STEP_OHMS)
                .withMass(0.047) // a cell of this size, from memory
                .withDoubt(Doubt.USUAL);
    }

    /** The measured truth by both criteria: counted charge down to the reserve, or the volts under load. */
    private static double secondsToLimit(Trace whole) {
        double out = 0;
        double usable = (1 - LIMITS.si(Quantity.RESERVE)) * CAPACITY;
        for (int i = 0; i + 1 < whole.size(); i++) {
            double step = whole.timeSeconds()[i + 1] - whole.timeSeconds()[i];
            out += 0.5 * (whole.currentAmps()[i] + whole.currentAmps()[i + 1]) * step;
            if (out >= usable || whole.packVolts()[i + 1] <= LIMITS.si(Quantity.LOAD_MINIMUM)) {
                return whole.timeSeconds()[i + 1] - whole.timeSeconds()[0];
            }
        }
        throw new IllegalStateException("the record ends before the cell does");
    }

    /** Mean currents of stretches of equal length that draw. */
    private static List<Double> stretches(Trace whole, double seconds) {
        List<Double> amps = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < whole.size(); i++) {
            if (whole.timeSeconds()[i] - whole.timeSeconds()[from] >= seconds) {
                double coulombs = 0;
                for (int k = from; k < i; k++) {
                    coulombs += 0.5
                            * (whole.currentAmps()[k] + whole.currentAmps()[k + 1])
                            * (whole.timeSeconds()[k + 1] - whole.timeSeconds()[k]);
                }
                double mean = coulombs / (whole.timeSeconds()[i] - whole.timeSeconds()[from]);
                if (mean > 0.1) {
                    amps.add(mean);
                }
                from = i;
            }
        }
        return amps;
    }
}
