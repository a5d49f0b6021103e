package fettle.engine.health;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.cell.Chemistry;
import fettle.engine.cell.DefaultCurves;
import fettle.engine.cell.RestCurve;
import fettle.engine.health.identification.CellBelief;
import fettle.engine.health.identification.Identification;
import fettle.engine.health.identification.IdentifiedCircuit;
import fettle.engine.health.identification.LoadWindow;
import fettle.engine.health.identification.MeasuredCell;
import fettle.engine.health.identification.PairCount;
import fettle.engine.pack.Pack;
import fettle.engine.pack.Packs;
import fettle.engine.trace.Trace;
import fettle.engine.units.Estimate;
import java.util.List;
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

    /** US06 took 2.586 Ah of the 2.88 Ah that rests between pulses tell: 10 % are left. */
    @Test
    void chargeIsFollowedThroughTheRun() {
        Trace trace = MeasuredCell.trace("us06_25C");
        RunCharge charge = charge(trace, trace.packVolts());
        assertThat(charge.atEnd().value()).isCloseTo(0.10, within(0.03));
        assertThat(charge.unlikeItselfSeconds()).isNaN();
        assertThat(TraceHealth.of(trace, PACK).withCharge(trace, PACK).remarks())
                .anyMatch(remark -> remark.contains("the mean cell ends the run at"));
    }

    @Test
    void cellThatStopsBehavingLikeItselfIsToldWithTheTime() {
        Trace trace = MeasuredCell.trace("us06_25C");
        double[] volts = trace.packVolts().clone();
        for (int row = 0; row < volts.length; row++) {
            volts[row] -= trace.timeSeconds()[row] > 3000 ? 0.1 * trace.currentAmps()[row] : 0;
        }
        assertThat(charge(trace, volts).unlikeItselfSeconds()).isBetween(3000.0, 3120.0);
    }

    private static RunCharge charge(Trace trace, double[] volts) {
        RestCurve curve = DefaultCurves.of(PACK.chemistry());
        CellBelief belief =
                CellBelief.of(curve, volts[0], 0.03, new Estimate(PACK.ratedCapacityCoulombs(), 300, List.of()));
        Trace part = trace.part(0, 20_000); // before anything happens: its circuit is the cell's own
        IdentifiedCircuit circuit = Identification.of(
                LoadWindow.of(part.timeSeconds(), part.currentAmps(), part.packVolts(), 300), belief, PairCount.TWO);
        return RunCharge.of(trace, volts, 0, trace.size(), belief, circuit);
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
