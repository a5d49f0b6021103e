package fettle.engine.pack.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fettle.engine.cell.circuit.Arrhenius;
import fettle.engine.cell.circuit.CellCircuit;
import fettle.engine.cell.circuit.OpenCircuit;
import fettle.engine.cell.circuit.RcPair;
import fettle.engine.cell.circuit.Resistances;
import fettle.engine.cell.circuit.ThermalNode;
import fettle.engine.units.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.assertj.core.api.ThrowableAssert;
import org.junit.jupiter.api.Test;

/** Bad input is refused with the figure, the range and the mend; a step that cannot end says so. */
class SimulationRefusalsTest {
    private static final double KELVINS = 298.15;
    private static final OpenCircuit CURVE = OpenCircuit.of(new double[] {0, 0.5, 1}, new double[] {3.2, 3.8, 4.2});
    private static final CellCircuit CELL =
            CellCircuit.of(7200, CURVE, 0.01, new RcPair(0.005, 3000), new RcPair(0.005, 30_000));

    @Test
    void curveThatFallsIsRefusedByItsRow() {
        assertRefused(
                () -> OpenCircuit.of(new double[] {0, 0.5, 0.7, 1}, new double[] {3.2, 3.8, 3.8, 4.2}),
                "row 3 of the rest-voltage table is charge 0.7000, 3.8000 V; expected both to rise");
        assertRefused(() -> OpenCircuit.of(new double[] {0, 0}, new double[] {3, 4}), "row 2");
        assertRefused(() -> OpenCircuit.of(new double[] {0, 1}, new double[] {3, Double.NaN}), "row 2");
    }

    @Test
    void negativeResistanceIsRefused() {
        assertRefused(() -> Resistances.constant(-0.001, 0, 0), "R0 is -0.001 Ω; expected 0 Ω or more");
        assertRefused(() -> Resistances.constant(0.001, Double.NaN, 0), "R1 is NaN Ω");
    }

    @Test
    void everyFaultOfACellIsToldAtOnce() {
        assertThatThrownBy(() -> new CellCircuit(
                        0,
                        CURVE,
                        Resistances.constant(0.01, 0, 0),
                        1,
                        -2,
                        new Arrhenius(-1),
                        new ThermalNode(0, -1),
                        1.2))
                .isInstanceOfSatisfying(
                        InputException.class,
                        refused -> assertThat(refused.faults())
                                .extracting("field")
                                .containsExactly(
                                        "capacity",
                                        "c2",
                                        "activation_energy",
                                        "heat_capacity",
                                        "heat_transfer",
                                        "charge_efficiency"));
    }

    @Test
    void contradictoryAndUnreachableEndsAreRefusedBeforeStarting() {
        assertRefused(
                () -> Protocol.of(ProtocolStep.of(
                        "load",
                        new Demand.Current(1),
                        1,
                        new End(EndKind.VOLTS_AT_MOST, 3.9),
                        new End(EndKind.VOLTS_AT_LEAST, 3.5))),
                "leave nothing between them");
        assertRefused(
                () -> Protocol.of(
                        ProtocolStep.of("load", new Demand.Current(2), 1, new End(EndKind.CURRENT_AT_MOST, 0.5))),
                "step \"load\" can never end: \"current either way at most 0.5 A\", but the current is held at 2.0 A");
        assertRefused(
                () -> Protocol.of(ProtocolStep.of(
                        "charge",
                        new Demand.Charge(4.2, 2, Double.POSITIVE_INFINITY, 0),
                        1,
                        new End(EndKind.VOLTS_AT_LEAST, 4.3))),
                "but the source stops at 4.2 V");
        assertRefused(() -> Protocol.of(ProtocolStep.of("load", new Demand.Current(1), 1)), "has no end condition");
    }

    @Test
    void stepThatRunsAwaySaysHowFarItCame() {
        assertRefused(
                () -> run(new Demand.Current(2), new End(EndKind.CELL_VOLTS_AT_LEAST, 4.1)),
                "step \"it\" does not end by volts of any cell at least 4.1 V",
                "a cell has come to a charge of -50 %");
    }

    @Test
    void stepThatStandsStillSaysSo() {
        assertRefused(
                () -> run(new Demand.Rest(), new End(EndKind.CELL_VOLTS_AT_LEAST, 4.1)), "nothing changes any more");
    }

    @Test
    void slowRecoveryIsNotTakenForStandingStill() {
        CellCircuit slow = CellCircuit.of(7200, CURVE, 0.01, new RcPair(0.01, 1e6), RcPair.NONE);
        Summary summary = Simulation.run(
                Bench.of(PackCircuit.series("P", 0, new CellAt(slow, 0.8, KELVINS)), KELVINS),
                Protocol.of(
                        ProtocolStep.of("load", new Demand.Current(3), 1, End.after(60)),
                        ProtocolStep.of("rest", new Demand.Rest(), 0.05, new End(EndKind.VOLTS_AT_LEAST, 4.0199))));
        assertThat(summary.lastStep().endedBy().kind()).isEqualTo(EndKind.VOLTS_AT_LEAST);
    }

    @Test
    void powerBeyondThePackSaysWhatItCanGive() {
        // 4.04 V behind 10 mΩ: at most 4.04²/0.04 = 408 W
        assertRefused(
                () -> run(new Demand.Power(500), End.after(10)),
                "step \"it\" after 0.000 s asks for 500.000 W; the packs can give at most 408.040 W there");
    }

    @Test
    void cutOffIsFoundEvenWhereTheWholeStepCouldNotDeliverThePower() {
        Summary summary = Simulation.run(
                alone(0.3),
                Protocol.of(ProtocolStep.of("load", new Demand.Power(150), 600, new End(EndKind.VOLTS_AT_MOST, 2.8))));
        assertThat(summary.lastStep().last().volts()).isBetween(2.79, 2.8 + 1e-6);
    }

    @Test
    void pairWhoseResistanceComesDownToNothingStaysFinite() {
        double[] charge = {0, 0.3, 0.6, 1};
        CellCircuit cell = new CellCircuit(
                7200,
                CURVE,
                Resistances.of(
                        charge, new double[] {0.01, 0.01, 0.01, 0.01}, new double[] {0.004, 0, 0.003, 0}, new double[] {
                            0, 0.005, 0, 0.1
                        }),
                3000,
                6e8,
                Arrhenius.WHOLE_CELL,
                new ThermalNode(40, 0.1),
                1);
        Summary summary = Simulation.run(
                Bench.of(PackCircuit.series("P", 0, new CellAt(cell, 1, KELVINS)), KELVINS),
                Protocol.of(ProtocolStep.of(
                        "load", new Demand.Current(2.9), 0.7, new End(EndKind.CELL_CHARGE_AT_MOST, 0))));
        assertThat(summary.seconds()).isCloseTo(7200 / 2.9, org.assertj.core.data.Offset.offset(1e-5));
        assertThat(summary.lowestVolts().value()).isBetween(3.0, 3.2);
    }

    @Test
    void cellsJoinedWithoutResistanceAreRefused() {
        CellCircuit ideal = CellCircuit.of(7200, CURVE, 0, RcPair.NONE, RcPair.NONE);
        PackCircuit one = PackCircuit.series("one", 0, new CellAt(ideal, 0.5, KELVINS));
        PackCircuit two = PackCircuit.series("two", 0, new CellAt(ideal, 0.6, KELVINS));
        assertRefused(
                () -> new Bench(List.of(one, two), Optional.empty(), KELVINS),
                "one: a cell joined side by side has R0 of 0 Ω");
    }

    @Test
    void longRunReportsItsProgressAndStopsWhenAsked() {
        List<Double> heard = new ArrayList<>();
        assertThatThrownBy(() -> Simulation.run(
                        alone(0.9),
                        Protocol.of(ProtocolStep.of("rest", new Demand.Rest(), 1, End.after(1e7))),
                        Recorder.none(),
                        Double.POSITIVE_INFINITY,
                        (seconds, steps) -> {
                            heard.add(seconds);
                            return heard.size() < 3;
                        }))
                .isInstanceOf(CancelledException.class)
                .hasMessageContaining("24576 simulated seconds");
        assertThat(heard).isSorted().hasSize(3);
    }

    private static Bench alone(double charge) {
        return Bench.of(PackCircuit.series("P", 0, new CellAt(CELL, charge, KELVINS)), KELVINS);
    }

    private static void run(Demand demand, End end) {
        Simulation.run(alone(0.8), Protocol.of(ProtocolStep.of("it", demand, 1, end)));
    }

    private static void assertRefused(ThrowableAssert.ThrowingCallable call, String... parts) {
        assertThatThrownBy(call).isInstanceOf(InputException.class).hasMessageContainingAll(parts);
    }
}
