package fettle.engine.pack.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.cell.circuit.Arrhenius;
import fettle.engine.cell.circuit.CellCircuit;
import fettle.engine.cell.circuit.OpenCircuit;
import fettle.engine.cell.circuit.RcPair;
import fettle.engine.cell.circuit.ThermalNode;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Cells whose rest volts are a straight line of charge have answers on paper. Each formula stands above its test; the
 * tolerance is rounding where a step is exact, and the square of the step where currents are held over a step.
 */
class SimulationAgainstClosedFormTest {
    private static final double KELVINS = 298.15;
    private static final double EMPTY_VOLTS = 3.2;
    private static final double SLOPE_VOLTS = 0.9;
    private static final double COULOMBS = 7200;
    private static final double R0 = 0.011;
    private static final RcPair ONE = new RcPair(0.006, 2500);
    private static final RcPair TWO = new RcPair(0.009, 30_000);
    private static final OpenCircuit LINE =
            OpenCircuit.of(new double[] {0, 1}, new double[] {EMPTY_VOLTS, EMPTY_VOLTS + SLOPE_VOLTS});
    private static final CellCircuit CELL = CellCircuit.of(COULOMBS, LINE, R0, ONE, TWO);
    private static final CellCircuit OHMIC = CellCircuit.of(COULOMBS, LINE, R0, RcPair.NONE, RcPair.NONE);

    /** V = E − I·R0 − Σ I·R·(1 − exp(−t/RC)), E falling by slope·I·t/Q: exact for every time step. */
    @ParameterizedTest
    @ValueSource(doubles = {0.25, 1, 7, 60})
    void constantCurrentFollowsTheLineAndTheExponentials(double stepSeconds) {
        double amps = 12;
        Samples samples = new Samples(Moment::volts, now -> now.cellCharge(0));
        Simulation.run(
                alone(CELL, 0.9),
                Protocol.of(ProtocolStep.of("load", new Demand.Current(amps), stepSeconds, End.after(420))),
                samples,
                60,
                Progress.silent());
        assertThat(samples.rows()).hasSizeGreaterThan(7);
        for (double[] row : samples.rows()) {
            double t = row[0];
            double charge = 0.9 - amps * t / COULOMBS;
            double volts = EMPTY_VOLTS
                    + SLOPE_VOLTS * charge
                    - amps * R0
                    - amps * ONE.ohms() * -Math.expm1(-t / ONE.seconds())
                    - amps * TWO.ohms() * -Math.expm1(-t / TWO.seconds());
            assertThat(row[1]).as("volts at %s s", t).isCloseTo(volts, within(1e-12));
            assertThat(row[2]).as("charge at %s s", t).isCloseTo(charge, within(1e-13));
        }
    }

    /** At rest after a load, the pairs fall by exp(−t/RC). */
    @Test
    void polarisationDecaysAtRest() {
        double amps = 20;
        Summary summary = Simulation.run(
                alone(CELL, 0.8),
                Protocol.of(
                        ProtocolStep.of("load", new Demand.Current(amps), 1, End.after(30)),
                        ProtocolStep.of("rest", new Demand.Rest(), 1, End.after(45.5))));
        double v1 = amps * ONE.ohms() * -Math.expm1(-30 / ONE.seconds()) * Math.exp(-45.5 / ONE.seconds());
        double v2 = amps * TWO.ohms() * -Math.expm1(-30 / TWO.seconds()) * Math.exp(-45.5 / TWO.seconds());
        double rest = EMPTY_VOLTS + SLOPE_VOLTS * (0.8 - amps * 30 / COULOMBS);
        assertThat(summary.lastStep().last().volts()).isCloseTo(rest - v1 - v2, within(1e-12));
        assertThat(summary.cells().get(0).restVolts()).isCloseTo(rest, within(1e-12));
    }

    /**
     * Without pairs I = 2P/(E + √(E² − 4RP)) and dE/dt = −slope·I/Q, so that t = (F(E0) − F(E1))·Q/(2P·slope) with F = ½E² +
     * ½(E·√(E² − a²) − a²·ln(E + √(E² − a²))), a² = 4RP. At the cut-off V the source is at E1 = V + R·P/V.
     */
    @Test
    void constantPowerReachesItsCutOffOnTime() {
        double watts = 60;
        double cutOff = 3.15;
        double last = cutOff + R0 * watts / cutOff;
        double first = EMPTY_VOLTS + SLOPE_VOLTS;
        double seconds = (area(first, watts) - area(last, watts)) * COULOMBS / (2 * watts * SLOPE_VOLTS);
        Summary summary = Simulation.run(
                alone(OHMIC, 1),
                Protocol.of(
                        ProtocolStep.of("power", new Demand.Power(watts), 1, new End(EndKind.VOLTS_AT_MOST, cutOff))));
        assertThat(summary.seconds()).isCloseTo(seconds, within(1e-6 * seconds));
        assertThat(summary.passed().outJoules()).isCloseTo(watts * seconds, within(1e-6 * watts * seconds));
    }

    private static double area(double volts, double watts) {
        double a2 = 4 * R0 * watts;
        double root = Math.sqrt(volts * volts - a2);
        return 0.5 * volts * volts + 0.5 * (volts * root - a2 * Math.log(volts + root));
    }

    /** Into a resistor the source E falls as exp(−t/τ), τ = Q·(R + Rload)/slope. */
    @Test
    void resistorDischargesAnOhmicCellExponentially() {
        double load = 0.35;
        double tau = COULOMBS * (R0 + load) / SLOPE_VOLTS;
        double start = EMPTY_VOLTS + SLOPE_VOLTS;
        Summary summary = Simulation.run(
                alone(OHMIC, 1), Protocol.of(ProtocolStep.of("load", new Demand.Resistor(load), 1, End.after(600))));
        double volts = start * Math.exp(-600 / tau) * load / (load + R0);
        assertThat(summary.lastStep().last().volts()).isCloseTo(volts, within(1e-6));
    }

    /** Behind a source resistance Rs the taper current falls as exp(−t/τ), τ = Q·(R + Rs)/slope. */
    @Test
    void taperOfAConstantVoltageChargeIsExponential() {
        double limit = 4.1;
        double sourceOhms = 0.02;
        double tau = COULOMBS * (R0 + sourceOhms) / SLOPE_VOLTS;
        double full = 6;
        Summary summary = Simulation.run(
                alone(OHMIC, 0.7),
                Protocol.of(ProtocolStep.of(
                        "charge",
                        new Demand.Charge(limit, full, Double.POSITIVE_INFINITY, sourceOhms),
                        1,
                        new End(EndKind.CURRENT_AT_MOST, 0.3))));
        double atSwitch = limit - full * (R0 + sourceOhms);
        double heldSeconds = (atSwitch - (EMPTY_VOLTS + SLOPE_VOLTS * 0.7)) / SLOPE_VOLTS * COULOMBS / full;
        List<StepOutcome.LimitChange> limits = summary.lastStep().limits();
        assertThat(limits)
                .extracting(StepOutcome.LimitChange::limit)
                .containsExactly(Demand.Limit.CURRENT, Demand.Limit.VOLTS);
        assertThat(limits.get(1).seconds()).isCloseTo(heldSeconds, within(1e-6));
        double taperSeconds = tau * Math.log(full / 0.3);
        assertThat(summary.seconds() - heldSeconds).isCloseTo(taperSeconds, within(1e-5 * taperSeconds));
    }

    /** Without heat transfer the rise is the heat over the heat capacity: I²·(R0·t + Σ R·(t − RC·(1 − exp(−t/RC)))). */
    @Test
    void adiabaticCellWarmsByItsHeatOverItsHeatCapacity() {
        double amps = 15;
        double t = 300;
        CellCircuit cell = CELL.with(Arrhenius.NONE, new ThermalNode(48, 0));
        Summary summary = Simulation.run(
                alone(cell, 0.9), Protocol.of(ProtocolStep.of("load", new Demand.Current(amps), 1, End.after(t))));
        double heat = amps * amps * (R0 * t + builtUp(ONE, t) + builtUp(TWO, t));
        assertThat(summary.passed().cellHeatJoules()).isCloseTo(heat, within(1e-9 * heat));
        assertThat(summary.cells().get(0).kelvins() - KELVINS).isCloseTo(heat / 48, within(1e-9));
    }

    private static double builtUp(RcPair pair, double t) {
        return pair.ohms() * (t + pair.seconds() * Math.expm1(-t / pair.seconds()));
    }

    /** With heat transfer h an ohmic cell approaches I²·R/h as 1 − exp(−h·t/C): exact for every time step. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 30})
    void cooledCellApproachesItsFinalTemperature(double stepSeconds) {
        double amps = 15;
        double h = 0.12;
        CellCircuit cell = OHMIC.with(Arrhenius.NONE, new ThermalNode(48, h));
        Summary summary = Simulation.run(
                alone(cell, 0.9),
                Protocol.of(ProtocolStep.of("load", new Demand.Current(amps), stepSeconds, End.after(300))));
        double rise = amps * amps * R0 / h * -Math.expm1(-h * 300 / 48);
        assertThat(summary.cells().get(0).kelvins() - KELVINS).isCloseTo(rise, within(1e-9));
    }

    /** Two ohmic packs joined: I = ΔE/R·exp(−t/τ), τ = R·Q₁·Q₂/(slope·(Q₁ + Q₂)) with R all resistances of the loop. */
    @Test
    void twoPacksEqualiseWithTheirTimeConstant() {
        double lead = 0.01;
        CellCircuit small = CellCircuit.of(COULOMBS / 2, LINE, 0.02, RcPair.NONE, RcPair.NONE);
        PackCircuit full = PackCircuit.series("full", lead, new CellAt(OHMIC, 0.8, KELVINS));
        PackCircuit low = PackCircuit.series("low", lead, new CellAt(small, 0.3, KELVINS));
        double loop = R0 + 0.02 + 2 * lead;
        double tau = loop * COULOMBS * (COULOMBS / 2) / (SLOPE_VOLTS * 1.5 * COULOMBS);
        double peak = SLOPE_VOLTS * 0.5 / loop;
        Samples samples = new Samples(now -> now.packAmps(0), now -> now.packAmps(1));
        Summary summary = Simulation.run(
                new Bench(List.of(full, low), Optional.empty(), KELVINS),
                Protocol.of(ProtocolStep.of("joined", new Demand.Rest(), 1, End.after(5 * tau))),
                samples,
                10,
                Progress.silent());
        assertThat(samples.rows().get(0)[1]).isCloseTo(peak, within(1e-12));
        for (double[] row : samples.rows()) {
            assertThat(row[1]).as("at %s s", row[0]).isCloseTo(peak * Math.exp(-row[0] / tau), within(2e-5 * peak));
            assertThat(row[1] + row[2]).as("charge is handed over, not lost").isCloseTo(0, within(1e-9));
        }
        double leadHeat = 2 * lead * peak * peak * tau / 2 * -Math.expm1(-10);
        assertThat(summary.passed().leadHeatJoules()).isCloseTo(leadHeat, within(1e-4 * leadHeat));
    }

    /** A balancer takes the charge between two cells in Q·Δz/(bleed current × duty), here of cells without resistance. */
    @Test
    void balancerLevelsCellsInTheTimeOfTheirChargeDifference() {
        CellCircuit ideal = CellCircuit.of(COULOMBS, LINE, 1e-9, RcPair.NONE, RcPair.NONE);
        PackCircuit pack =
                PackCircuit.series("P", 0, new CellAt(ideal, 0.62, KELVINS), new CellAt(ideal, 0.60, KELVINS));
        double within = 0.003;
        double seconds = COULOMBS * (0.02 - within / SLOPE_VOLTS) / (0.2 * 0.9);
        Summary summary = Simulation.run(
                new Bench(List.of(pack), Optional.of(new Balancer(0.2, 0.9, within)), KELVINS),
                Protocol.of(ProtocolStep.of(
                        "balance", new Demand.Rest(), 1, new End(EndKind.CELL_SPREAD_AT_MOST, within + 1e-9))));
        assertThat(summary.seconds()).isCloseTo(seconds, within(0.01));
        assertThat(summary.cells().get(1).chargeFraction()).isEqualTo(0.60);
    }

    private static Bench alone(CellCircuit cell, double charge) {
        return Bench.of(PackCircuit.series("cell", 0, new CellAt(cell, charge, KELVINS)), KELVINS);
    }
}
