package fettle.planner.timer;

import fettle.engine.cell.Chemistry;
import fettle.engine.cell.RestCurve;
import fettle.engine.cell.circuit.Arrhenius;
import fettle.engine.cell.circuit.CellCircuit;
import fettle.engine.cell.circuit.OpenCircuit;
import fettle.engine.cell.circuit.RcPair;
import fettle.engine.cell.circuit.ThermalNode;
import fettle.engine.cell.published.EckerPouch2015;
import fettle.engine.pack.model.CellModel;
import fettle.engine.pack.model.PackModel;
import fettle.engine.pack.power.ProfilePart;
import fettle.engine.pack.simulation.Bench;
import fettle.engine.pack.simulation.CellAt;
import fettle.engine.pack.simulation.Demand;
import fettle.engine.pack.simulation.End;
import fettle.engine.pack.simulation.EndKind;
import fettle.engine.pack.simulation.PackCircuit;
import fettle.engine.pack.simulation.Protocol;
import fettle.engine.pack.simulation.ProtocolStep;
import fettle.engine.pack.simulation.Simulation;
import fettle.engine.pack.simulation.StepOutcome;
import fettle.engine.rule.Limits;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.RuleSet;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A made-up season of one craft and one pack whose truth is known.
 *
 * <p>It shares nothing with the timer's assumptions: currents are not lognormal but follow a mixture of calm and busy days
 * with wind drawn from a Gamma law and manoeuvres in bursts; the cells have the rest curve of one published cell, not the
 * chemistry's mean, other time constants, unlike capacities and resistances, and fade over the season. What the estimator
 * is told of the pack is off by what a checked pack may be off.
 */
final class Season {
    static final Limits LIMITS = RuleSet.of(List.of()).limitsFor(Chemistry.LIPO, null, List.of());
    private static final int CELLS = 3;
    private static final double PART_SECONDS = 6;
    private static final double AIR_KELVINS = 293.15;

    private final Random random;
    private final double[] coulombs = new double[CELLS];
    private final double[] ohms = new double[CELLS];
    private final double calmAmps;
    private final double burstShare;
    private final double toldCapacityFactor;
    private final double toldResistanceFactor;
    private final double toldChargeError;

    Season(long seed, boolean bursts) {
        random = new Random(seed);
        double rated = TradeUnit.MILLIAMPERE_HOUR.toSi(1800 + 2000 * random.nextDouble());
        double aged = 0.85 + 0.15 * random.nextDouble();
        for (int cell = 0; cell < CELLS; cell++) {
            coulombs[cell] = rated * aged * (1 - 0.03 * random.nextDouble());
            ohms[cell] = 14 / TradeUnit.MILLIAMPERE_HOUR.fromSi(rated) * (1 + 0.3 * random.nextDouble());
        }
        calmAmps = rated / 3600 * (4 + 5 * random.nextDouble());
        burstShare = bursts ? 0.5 : 0;
        toldCapacityFactor = 1 + 0.05 * random.nextGaussian();
        toldResistanceFactor = 1 + 0.15 * random.nextGaussian();
        toldChargeError = 0.015 * random.nextGaussian();
    }

    /** The pack as its keeper knows it, full. */
    PackModel told() {
        List<CellModel> cells = new ArrayList<>();
        for (int cell = 0; cell < CELLS; cell++) {
            cells.add(new CellModel(
                    Math.min(1, 0.985 + toldChargeError),
                    coulombs[cell] * toldCapacityFactor,
                    ohms[cell] * Math.max(0.4, toldResistanceFactor)));
        }
        double kilograms = 0.025 * CELLS * coulombs[0] / 3600;
        return PackModel.uniform("P01", Chemistry.LIPO, CELLS, coulombs[0], 1, ohms[0])
                .withCells(cells)
                .withMass(kilograms)
                .at(AIR_KELVINS, AIR_KELVINS);
    }

    /** Currents of the next run, longer than any pack lasts. */
    List<ProfilePart> nextRun() {
        double wind = gamma(4) / 4; // mean 1, skewed
        boolean busy = random.nextDouble() < 0.3;
        double base = calmAmps * (0.85 + 0.15 * wind) * (busy ? 1.15 : 1);
        List<ProfilePart> parts = new ArrayList<>();
        double lull = 1;
        for (int part = 0; part < 220; part++) {
            lull = 0.8 * lull + 0.2 * (0.7 + 0.6 * random.nextDouble());
            boolean burst = random.nextDouble() < burstShare * 0.15;
            parts.add(new ProfilePart(base * lull * (burst ? 2.5 : 1), PART_SECONDS));
        }
        return parts;
    }

    /** Time at which the truth comes to reserve or minimum [s], the season's fade included. */
    double secondsToLimit(List<ProfilePart> run, int number) {
        List<ProtocolStep> steps = new ArrayList<>();
        for (ProfilePart part : run) {
            steps.add(new ProtocolStep(
                    "run",
                    new Demand.Current(part.amps()),
                    List.of(
                            new End(EndKind.CELL_VOLTS_AT_MOST, LIMITS.si(Quantity.LOAD_MINIMUM)),
                            new End(EndKind.CELL_CHARGE_AT_MOST, LIMITS.si(Quantity.RESERVE)),
                            End.after(part.seconds())),
                    1));
        }
        double fade = 1 - 0.0008 * number;
        double seconds = 0;
        for (StepOutcome step : Simulation.run(bench(fade), new Protocol(steps)).steps()) {
            seconds += step.seconds();
            if (step.endedBy().kind() != EndKind.AFTER) {
                return seconds;
            }
        }
        throw new IllegalStateException("the run ended before the pack did");
    }

    /** What a run of that length takes, told by a charger that reads 1 % off now and then. */
    RunDemand noted(List<ProfilePart> run, double seconds) {
        double drawn = 0;
        double left = seconds;
        for (ProfilePart part : run) {
            double held = Math.min(left, part.seconds());
            drawn += held * part.amps();
            left -= held;
        }
        return RunDemand.ofPutBack(Chemistry.LIPO, drawn * (1 + 0.01 * random.nextGaussian()), seconds);
    }

    private Bench bench(double fade) {
        double[] rest = EckerPouch2015.restVolts();
        double[] charge = new double[rest.length];
        double[] band = new double[rest.length];
        for (int row = 0; row < rest.length; row++) {
            charge[row] = row / (double) (rest.length - 1);
        }
        OpenCircuit open = OpenCircuit.of(RestCurve.of(charge, rest, band, Citation.commonPractice("one cell")));
        CellAt[] cells = new CellAt[CELLS];
        for (int cell = 0; cell < CELLS; cell++) {
            CellCircuit circuit = CellCircuit.of(
                            coulombs[cell] * fade,
                            open,
                            ohms[cell] * 0.9 / fade,
                            RcPair.ofTime(0.3 * ohms[cell], 6),
                            RcPair.ofTime(0.6 * ohms[cell], 60))
                    .with(Arrhenius.WHOLE_CELL, ThermalNode.of(0.025 * coulombs[0] / 3600, 1000, 0.05));
            cells[cell] = new CellAt(circuit, 0.985, AIR_KELVINS);
        }
        return Bench.of(PackCircuit.series("truth", 0.001, cells), AIR_KELVINS);
    }

    /** A Gamma variate of whole shape: a sum of exponentials. */
    private double gamma(int shape) {
        double sum = 0;
        for (int i = 0; i < shape; i++) {
            sum -= Math.log(1 - random.nextDouble());
        }
        return sum;
    }
}
