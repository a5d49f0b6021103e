package fettle.engine.supply.receiver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.supply.wire.Conductor;
import fettle.engine.supply.wire.Lead;
import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import java.util.List;
import org.junit.jupiter.api.Test;

class PowerAssessmentTest {
    private static final double ROOM = TradeUnit.CELSIUS.toSi(20);
    private static final Lead SHORT = new Lead(Conductor.awg(22), 0.3, ROOM, 0);
    private static final Lead LONG = new Lead(Conductor.awg(26), 1.2, ROOM, 0.02);

    @Test
    void addsCurrentsUpScenarioByScenario() {
        PowerBudget budget = PowerAssessment.of(supply(bec(3, 5)));

        // by hand, per servo 0.01 / 0.3 / 1.5 A: 0.0825, 0.66, 0.3 (one 1.5), 1.5; four of them and 0.1 A
        assertThat(budget.of(Scenario.CRUISE).amps()).isCloseTo(0.1 + 4 * 0.0825, within(1e-12));
        assertThat(budget.of(Scenario.HARD_MANOEUVRE).amps()).isCloseTo(0.1 + 4 * 0.66, within(1e-12));
        assertThat(budget.of(Scenario.ONE_STALLED).amps()).isCloseTo(0.1 + 1.5 + 3 * 0.3, within(1e-12));
        assertThat(budget.of(Scenario.ALL_STALLED).amps()).isCloseTo(0.1 + 4 * 1.5, within(1e-12));
        assertThat(budget.scenarios()).extracting(ScenarioPower::amps).hasSize(4);
        assertThat(budget.working().steps()).hasSize(4);
    }

    @Test
    void servoAtTheLongestLeadIsLowest() {
        ScenarioPower stalled = PowerAssessment.of(supply(bec(3, 5))).of(Scenario.ALL_STALLED);

        assertThat(stalled.lowestServo()).isEqualTo("rudder");
        double drop = 1.5 * LONG.ohms().value();
        assertThat(stalled.lowestServoVolts().value())
                .isCloseTo(stalled.receiverVolts().value() - drop, within(1e-12));
        assertThat(stalled.receiverVolts().value())
                .isCloseTo(5.0 - 6.1 * SHORT.ohms().value(), within(1e-12));
        assertThat(stalled.resetMarginVolts().value())
                .isCloseTo(stalled.receiverVolts().value() - 3.5, within(1e-12));
    }

    @Test
    void tellsPeakContinuousHeatAndReset() {
        Regulator weak = new Regulator(Regulator.Kind.LINEAR, 12.6, 5.0, 0, 2, 3);
        PowerBudget budget = PowerAssessment.of(supply(weak));

        assertThat(budget.warnings())
                .extracting(PowerWarning::id)
                .contains("over-continuous", "over-peak", "linear-heat");
        // (12.6 − 5.0) V · 0.43 A = 3.268 W
        assertThat(budget.of(Scenario.CRUISE).heatWatts()).isCloseTo(3.268, within(1e-9));
        assertThat(PowerAssessment.of(supply(bec(10, 20))).warnings()).isEmpty();
    }

    @Test
    void saggingReceiverPackResets() {
        Regulator pack = new Regulator(Regulator.Kind.DIRECT, 4.8, 4.6, 0.3, 5, 10);
        PowerBudget budget = PowerAssessment.of(supply(pack));

        assertThat(budget.warnings()).extracting(PowerWarning::id).contains("resets", "thin-reset-margin");
        assertThat(budget.improvements()).isNotEmpty();
        assertThat(budget.improvements().get(0).change()).contains("twice the current");
        assertThat(budget.improvements())
                .extracting(Improvement::marginVolts)
                .isSortedAccordingTo((one, other) -> Double.compare(other, one));
    }

    @Test
    void receiverPackLastsCapacityLessReserveOverCurrent() {
        Estimate capacity = Estimate.ofIndependent(
                TradeUnit.AMPERE_HOUR.toSi(2), List.of(new Driver("label", TradeUnit.AMPERE_HOUR.toSi(0.1))));
        Estimate seconds = new ReceiverPack(capacity, 0.4, 0).seconds(supply(bec(3, 5)));

        assertThat(TradeUnit.HOUR.fromSi(seconds.value())).isCloseTo(2 * 0.6 / 0.43, within(1e-9));
        assertThat(seconds.drivers().get(0).cause()).isEqualTo("what is flown");
    }

    @Test
    void refusesSwappedCurrentsAndABecThatLifts() {
        assertThatThrownBy(() -> new ServoDraw("rudder", 1.5, 0.3, 0.01 * 3, Basis.DATA, SHORT))
                .hasMessageContaining("swapped");
        assertThatThrownBy(() -> new Regulator(Regulator.Kind.LINEAR, 4.8, 6.0, 0, 3, 5))
                .hasMessageContaining("cannot give 6.0 V out of 4.8 V");
        assertThatThrownBy(() -> new Regulator(Regulator.Kind.SWITCHING, 12, 6.0, 0, 5, 3))
                .hasMessageContaining("swapped");
    }

    private static Regulator bec(double continuous, double peak) {
        return new Regulator(Regulator.Kind.SWITCHING, 12.6, 5.0, 0, continuous, peak);
    }

    private static ReceiverSupply supply(Regulator regulator) {
        return new ReceiverSupply(
                regulator,
                SHORT,
                List.of(
                        servo("left aileron", SHORT),
                        servo("right aileron", SHORT),
                        servo("elevator", SHORT),
                        servo("rudder", LONG)),
                0.1,
                3.5);
    }

    private static ServoDraw servo(String name, Lead lead) {
        return new ServoDraw(name, 0.01, 0.3, 1.5, Basis.MEASURED, lead);
    }
}
