package fettle.engine.health.identification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.cell.circuit.Arrhenius;
import fettle.engine.reference.ReferenceFiles;
import fettle.engine.trace.Trace;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/**
 * A measured 18650 cell, Kollmeyer, Mendeley Data 2018, doi:10.17632/wykht8y7tg.1: parameters come from the C/20 discharge and
 * the pulses only. Tolerances are those of the issue: 5 % on timed resistances, 25 mV on drive profiles above 10 % charge.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class IdentificationAgainstOpenDataTest {
    private static final double CAPACITY_COULOMBS = MeasuredCell.CAPACITY_COULOMBS;

    /** Of each instance, not of the class: where the data is not here, the tests are skipped, not broken. */
    private final SlowCurve slow = MeasuredCell.slowCurve();

    @Test
    void slowDischargeGivesCurveAndCapacity() {
        assertThat(TradeUnit.AMPERE_HOUR.fromSi(slow.capacityCoulombs())).isCloseTo(2.9973, within(0.003));
        assertThat(slow.curve().volts(1)).isCloseTo(4.1840, within(1e-4));
    }

    @Test
    void pulsesAt25DegreesGiveTheTimedResistances() {
        List<Double> errors = pulseErrors("hppc_25C", 0, 2.3);
        assertThat(errors).hasSizeGreaterThan(140);
        assertThat(share(errors, 0.05)).as("share within 5 %").isGreaterThan(0.98);
        assertThat(median(errors)).isLessThan(0.01);
    }

    @Test
    void pulsesAtFreezingGiveTheTimedResistances() {
        List<Double> errors = pulseErrors("hppc_0C", 0.28, 2.1);
        assertThat(errors).hasSizeGreaterThan(85);
        assertThat(share(errors, 0.05)).as("share within 5 %").isGreaterThan(0.97);
        assertThat(median(errors)).isLessThan(0.02);
    }

    @Test
    void driveProfilesNeverSeenArePredicted() {
        IdentifiedCell cell = MeasuredCell.identified("hppc_25C", slow, CAPACITY_COULOMBS, Arrhenius.WHOLE_CELL);
        Trace us06 = MeasuredCell.trace("us06_25C");
        double start = slow.curve().charge(us06.packVolts()[0]);
        assertThat(rmsAboveTenPercent(cell, us06, start, true)).isLessThan(0.025);
        assertThat(rmsAboveTenPercent(cell, us06, start, false))
                .as("with the pulses' own delay")
                .isLessThan(0.027);
        Trace mixed = MeasuredCell.trace("mixed1_25C");
        assertThat(rmsAboveTenPercent(cell, mixed, 1, true)).isLessThan(0.015);
    }

    @Test
    void temperatureLawMeetsTheTwoPointActivationEnergies() {
        List<TemperatureLaw.Reading> readings = new ArrayList<>();
        for (String file : List.of("hppc_25C", "hppc_0C")) {
            Trace trace = MeasuredCell.trace(file);
            for (String[] pulse : ReferenceFiles.rows(MeasuredCell.FOLDER + file + "_pulses_timed.csv")) {
                int group = List.of("0.592", "1.172", "1.462").indexOf(pulse[3].substring(0, 5));
                if (group >= 0 && Double.parseDouble(pulse[2]) < 6) {
                    double kelvins = TradeUnit.CELSIUS.toSi(Double.parseDouble(pulse[4]));
                    readings.add(new TemperatureLaw.Reading(
                            group, kelvins, pulse(trace, pulse).stepOhms(1)));
                }
            }
        }
        assertThat(readings).hasSize(6);
        TemperatureLaw law = TemperatureLaw.through(readings);
        // two-point values of the table at these charges: 21.4, 19.8, 21.0 kJ/mol, mean 20.7
        assertThat(law.activationJoulesPerMole().value()).isCloseTo(20_700, within(1_000.0));
    }

    private List<Double> pulseErrors(String name, double fromAmpereHours, double toAmpereHours) {
        Trace trace = MeasuredCell.trace(name);
        List<Double> errors = new ArrayList<>();
        for (String[] pulse : ReferenceFiles.rows(MeasuredCell.FOLDER + name + "_pulses_timed.csv")) {
            double removed = Double.parseDouble(pulse[3]);
            if (removed >= fromAmpereHours - 1e-9 && removed <= toAmpereHours) {
                IdentifiedCircuit found = pulse(trace, pulse);
                double slope = slow.curve().slopeVolts(found.startCharge().value()) / CAPACITY_COULOMBS;
                double[] seconds = {0.5, 1, Double.parseDouble(pulse[10])};
                int[] column = {11, 12, 14};
                for (int k = 0; k < seconds.length; k++) {
                    double drop = found.stepOhms(seconds[k]) + slope * seconds[k];
                    errors.add(Math.abs(drop / (1e-3 * Double.parseDouble(pulse[column[k]])) - 1));
                }
            }
        }
        return errors;
    }

    private IdentifiedCircuit pulse(Trace trace, String[] pulse) {
        double on = Double.parseDouble(pulse[1]);
        int from = 0;
        while (trace.timeSeconds()[from] < on - 10) {
            from++;
        }
        int to = from;
        while (to < trace.size() && trace.timeSeconds()[to] < on + 60) {
            to++;
        }
        CellBelief belief = CellBelief.of(
                slow.curve(),
                Double.parseDouble(pulse[5]),
                0.005,
                new Estimate(CAPACITY_COULOMBS, 0.05 * CAPACITY_COULOMBS, List.of()));
        return Identification.of(MeasuredCell.window(trace, from, to), belief, PairCount.TWO);
    }

    private static double rmsAboveTenPercent(IdentifiedCell cell, Trace trace, double start, boolean ownDelay) {
        LoadWindow window = MeasuredCell.window(trace, 0, trace.size());
        IdentifiedCell read = ownDelay ? cell.readBy(window) : cell;
        double[] volts = read.volts(window, trace.temperatureKelvins(), start);
        double counted = 0;
        double squares = 0;
        int rows = 0;
        for (int row = 1; row < volts.length; row++) {
            double step = window.seconds(row) - window.seconds(row - 1);
            counted += 0.5 * (window.amps(row) + window.amps(row - 1)) * step;
            if (start - counted / CAPACITY_COULOMBS > 0.1) {
                squares += (volts[row] - window.volts(row)) * (volts[row] - window.volts(row));
                rows++;
            }
        }
        return Math.sqrt(squares / rows);
    }

    private static double share(List<Double> errors, double within) {
        return errors.stream().filter(error -> error <= within).count() / (double) errors.size();
    }

    private static double median(List<Double> errors) {
        return errors.stream().sorted().skip(errors.size() / 2).findFirst().orElseThrow();
    }
}
