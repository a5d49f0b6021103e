package fettle.engine.health;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.cell.Chemistry;
import fettle.engine.health.identification.MeasuredCell;
import fettle.engine.pack.Pack;
import fettle.engine.pack.Packs;
import fettle.engine.trace.Trace;
import org.junit.jupiter.api.Test;

class TraceHealthTest {
    private static final Pack PACK = Packs.pack(Chemistry.LI_ION, 1, 2900, Pack.Identity.CONFIRMED);

    /** Kollmeyer 2018, US06 at 25 °C; its own pulses give R0 28 to 32 mΩ at mid charge (MORE.md, two-pair fits 29 to 30). */
    @Test
    void driveProfileGivesTheResistanceOfThePulses() {
        TraceHealth health = TraceHealth.of(MeasuredCell.trace("us06_25C"), PACK);
        assertThat(health.cells()).hasSize(1);
        CellResistance cell = health.cells().get(0);
        assertThat(cell.circuit()).isNotNull();
        assertThat(cell.circuit().r0().value()).isCloseTo(0.030, within(0.003));
        assertThat(cell.tenSecondOhms()).isCloseTo(0.038, within(0.004));
        assertThat(cell.r0At25Ohms()).isNotNull();
        assertThat(cell.r0At25Ohms().value()).isGreaterThan(cell.circuit().r0().value());
        assertThat(health.remarks()).anyMatch(remark -> remark.contains("cells were not logged"));
    }

    @Test
    void traceWithoutCurrentSaysWhatCannotBeKnown() {
        Trace whole = MeasuredCell.trace("dis1C_25C");
        Trace volts =
                new Trace(whole.timeSeconds(), whole.packVolts(), new double[0], new double[0][], new double[0], null);
        assertThat(TraceHealth.of(volts, PACK).cells()).isEmpty();
        assertThat(TraceHealth.of(volts, PACK).remarks()).anyMatch(remark -> remark.contains("no current was logged"));
    }

    @Test
    void steadyDischargeSaysThatItCannotTell() {
        TraceHealth health = TraceHealth.of(MeasuredCell.trace("dis1C_25C"), PACK);
        assertThat(health.cells()).allSatisfy(cell -> {
            assertThat(cell.circuit()).isNull();
            assertThat(cell.why()).isNotBlank();
        });
    }
}
