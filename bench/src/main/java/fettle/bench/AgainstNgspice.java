package fettle.bench;

import fettle.engine.cell.circuit.Arrhenius;
import fettle.engine.cell.circuit.CellCircuit;
import fettle.engine.cell.circuit.OpenCircuit;
import fettle.engine.cell.circuit.RcPair;
import fettle.engine.cell.circuit.ThermalNode;
import fettle.engine.pack.simulation.Bench;
import fettle.engine.pack.simulation.CellAt;
import fettle.engine.pack.simulation.Demand;
import fettle.engine.pack.simulation.End;
import fettle.engine.pack.simulation.PackCircuit;
import fettle.engine.pack.simulation.Progress;
import fettle.engine.pack.simulation.Protocol;
import fettle.engine.pack.simulation.ProtocolStep;
import fettle.engine.pack.simulation.SeriesGroup;
import fettle.engine.pack.simulation.Simulation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;

/** The hour's charge timed beside ngspice, and circuits with drawn numbers compared with it. */
public final class AgainstNgspice {
    private static final int CIRCUITS = 25;
    private static final int TIMED_RUNS = 5;
    private static final double SECONDS = 900;
    private static final double SAMPLE_SECONDS = 10;

    private AgainstNgspice() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("fettle-bench");
        time(folder);
        for (int seed = 1; seed <= CIRCUITS; seed++) {
            compare(folder, seed);
        }
    }

    private static void time(Path folder) throws IOException, InterruptedException {
        Bench bench = SixCells.bench();
        Demand source = SixCells.charge().steps().get(0).demand();
        String netlist = Netlist.of(bench, source, SixCells.HOUR_SECONDS, 1, "out.data");
        double process = Double.POSITIVE_INFINITY;
        double analysis = Double.POSITIVE_INFINITY;
        for (int run = 0; run < TIMED_RUNS; run++) {
            CircuitSimulator.Outcome outcome = CircuitSimulator.run(folder, netlist);
            process = Math.min(process, outcome.processSeconds());
            analysis = Math.min(analysis, outcome.analysisSeconds());
        }
        double ours = ProcessorTime.seconds(bench, SixCells.charge()).median();
        System.out.printf(
                Locale.ROOT,
                "6S hour of charge: ours %.3f ms; ngspice process %.0f ms (%.0f times), its analysis %.0f ms (%.0f times)%n",
                1e3 * ours,
                1e3 * process,
                process / ours,
                1e3 * analysis,
                analysis / ours);
    }

    private static void compare(Path folder, int seed) throws IOException, InterruptedException {
        SplittableRandom random = new SplittableRandom(seed);
        Bench bench = bench(random);
        int series = bench.packs().get(0).groups().size();
        Demand demand = demand(random, series);
        CircuitSimulator.Outcome theirs =
                CircuitSimulator.run(folder, Netlist.of(bench, demand, SECONDS, 1, "out.data"));
        double reached = theirs.rows().get(theirs.rows().size() - 1)[0];
        List<double[]> ours = new ArrayList<>();
        Simulation.run(
                bench,
                Protocol.of(ProtocolStep.of("it", demand, 1, End.after(SECONDS))),
                now -> {
                    double[] row = new double[2 + 2 * now.cells()];
                    row[0] = now.seconds();
                    row[1] = now.volts();
                    for (int cell = 0; cell < now.cells(); cell++) {
                        row[2 + 2 * cell] = now.cellCharge(cell);
                        row[3 + 2 * cell] = now.cellKelvins(cell) - bench.ambientKelvins();
                    }
                    ours.add(row);
                },
                SAMPLE_SECONDS,
                Progress.silent());
        if (reached < SECONDS) {
            System.out.printf(Locale.ROOT, "circuit %2d: ngspice gave up at %.0f s%n", seed, reached);
            return;
        }
        double[] worst = new double[3];
        for (double[] row : ours) {
            if (row[0] < SAMPLE_SECONDS) {
                continue;
            }
            for (int column = 1; column < row.length; column++) {
                int kind = column == 1 ? 0 : 1 + column % 2;
                double error = Math.abs(row[column] - at(theirs.rows(), row[0], column));
                worst[kind] = Math.max(worst[kind], error);
            }
        }
        System.out.printf(
                Locale.ROOT,
                "circuit %2d: %d packs of %dS, %s: at most %.3f mV at the terminals, %.1e of charge, %.4f K%n",
                seed,
                bench.packs().size(),
                series,
                demand.getClass().getSimpleName(),
                1e3 * worst[0],
                worst[1],
                worst[2]);
    }

    private static double at(List<double[]> rows, double time, int column) {
        for (int row = 1; row < rows.size(); row++) {
            if (rows.get(row)[0] >= time) {
                double[] before = rows.get(row - 1);
                double[] after = rows.get(row);
                return before[column] + (time - before[0]) / (after[0] - before[0]) * (after[column] - before[column]);
            }
        }
        return rows.get(rows.size() - 1)[column];
    }

    private static double between(SplittableRandom random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private static Bench bench(SplittableRandom random) {
        double ambient = between(random, 273, 303);
        int series = 1 + random.nextInt(4);
        double[] charge = new double[21];
        double[] volts = new double[21];
        for (int row = 0; row < charge.length; row++) {
            charge[row] = row / 20.0;
            volts[row] = row == 0 ? between(random, 2.9, 3.3) : volts[row - 1] + between(random, 0.01, 0.09);
        }
        OpenCircuit curve = OpenCircuit.of(charge, volts);
        List<PackCircuit> packs = new ArrayList<>();
        for (int pack = random.nextInt(3); pack >= 0; pack--) {
            List<SeriesGroup> groups = new ArrayList<>();
            double level = between(random, 0.4, 0.8);
            for (int place = 0; place < series; place++) {
                List<CellAt> side = new ArrayList<>();
                for (int cell = random.nextInt(2); cell >= 0; cell--) {
                    CellCircuit circuit = CellCircuit.of(
                                    between(random, 5000, 18_000),
                                    curve,
                                    between(random, 0.003, 0.012),
                                    new RcPair(between(random, 0.002, 0.008), between(random, 500, 5000)),
                                    new RcPair(between(random, 0.002, 0.008), between(random, 5000, 50_000)))
                            .with(
                                    new Arrhenius(between(random, 0, 30_000)),
                                    new ThermalNode(between(random, 30, 100), between(random, 0.02, 0.3)));
                    side.add(new CellAt(circuit, level + between(random, -0.02, 0.02), ambient));
                }
                groups.add(new SeriesGroup(
                        side, random.nextBoolean() ? between(random, 20, 200) : Double.POSITIVE_INFINITY));
            }
            packs.add(new PackCircuit("pack " + packs.size(), groups, between(random, 0.002, 0.02)));
        }
        return new Bench(packs, Optional.empty(), ambient);
    }

    private static Demand demand(SplittableRandom random, int series) {
        return switch (random.nextInt(5)) {
            case 0 -> new Demand.Rest();
            case 1 -> new Demand.Current(between(random, 1, 6));
            case 2 -> new Demand.Power(series * between(random, 3, 20));
            case 3 -> new Demand.Resistor(series * between(random, 0.7, 3));
            default -> new Demand.Charge(series * between(random, 3.8, 4.2), between(random, 1, 6), 1e9, 0.002);
        };
    }
}
