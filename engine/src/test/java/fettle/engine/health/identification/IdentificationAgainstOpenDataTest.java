package fettle.engine.health.identification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.trace.Trace;
import fettle.engine.units.TradeUnit;
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

    private final MeasuredPulses pulses = new MeasuredPulses(slow);

    @Test
    void slowDischargeGivesCurveAndCapacity() {
        assertThat(TradeUnit.AMPERE_HOUR.fromSi(slow.capacityCoulombs())).isCloseTo(2.9973, within(0.003));
        // rest volts of the full cell before the first pulse of another day (timed table); two charges to full agree so
        assertThat(slow.curve().volts(1)).isCloseTo(4.1750, within(0.006));
    }

    @Test
    void everyPulseAt25DegreesGivesTheTimedResistances() {
        List<Double> errors = pulses.errors("hppc_25C", MeasuredPulses.LOAD_ONLY);
        assertThat(errors).hasSize(3 * 64).allMatch(error -> error <= 0.05);
        assertThat(MeasuredPulses.median(errors)).isLessThan(0.01);
    }

    @Test
    void everyPulseAtFreezingGivesTheTimedResistances() {
        List<Double> errors = pulses.errors("hppc_0C", MeasuredPulses.LOAD_ONLY);
        assertThat(errors).hasSize(3 * 49).allMatch(error -> error <= 0.05);
        assertThat(MeasuredPulses.median(errors)).isLessThan(0.01);
    }

    /** One circuit for load and recovery: resistance falls with current, in the cold so much that the two disagree. */
    @Test
    void pulsesWithTheirRecoveryGiveMostTimedResistances() {
        assertThat(MeasuredPulses.share(pulses.errors("hppc_25C", MeasuredPulses.WITH_RECOVERY), 0.05))
                .isGreaterThan(0.97);
        assertThat(MeasuredPulses.share(pulses.errors("hppc_0C", MeasuredPulses.WITH_RECOVERY), 0.05))
                .isGreaterThan(0.88);
    }

    @Test
    void driveProfilesNeverSeenArePredicted() {
        IdentifiedCell cell = MeasuredCell.identified("hppc_25C", slow, CAPACITY_COULOMBS, pulses.lawOfMidCharge());
        Trace us06 = MeasuredCell.trace("us06_25C");
        double start = Math.min(1, slow.curve().charge(us06.packVolts()[0]));
        assertThat(MeasuredPulses.rmsVolts(cell, us06, start, 0.1)).isLessThan(0.025);
        assertThat(MeasuredPulses.rmsVolts(cell, us06, start, 0)).isLessThan(0.025);
        assertThat(MeasuredPulses.rmsVolts(cell.readBy(MeasuredPulses.whole(us06)), us06, start, 0.1))
                .as("with the delay its own steps show")
                .isLessThan(0.023);
        Trace mixed = MeasuredCell.trace("mixed1_25C");
        assertThat(MeasuredPulses.rmsVolts(cell, mixed, 1, 0.1)).isLessThan(0.015);
        assertThat(MeasuredPulses.rmsVolts(cell, mixed, 1, 0)).isLessThan(0.02);
    }

    @Test
    void temperatureLawMeetsTheTwoPointActivationEnergies() {
        // two-point values of the table, 5.8 A at 0.59, 1.17 and 1.46 Ah out: 21.4, 19.8, 21.0 kJ/mol, mean 20.7
        TemperatureLaw law = pulses.law(0.58, 1.5, 5.7, 5.9);
        assertThat(law.activationJoulesPerMole().value()).isCloseTo(20_700, within(700.0));
        TemperatureLaw small = pulses.law(0.57, 1.5, 1.4, 1.5);
        // the same table at 1.45 A: 23.6, 21.1, 22.5
        assertThat(small.activationJoulesPerMole().value()).isCloseTo(22_400, within(700.0));
    }
}
