package fettle.engine.pack.simulation;

import fettle.engine.cell.circuit.Arrhenius;
import fettle.engine.cell.circuit.CellCircuit;
import fettle.engine.cell.circuit.OpenCircuit;
import fettle.engine.cell.circuit.Resistances;
import fettle.engine.cell.circuit.ThermalNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/** Packs and protocols drawn at random from a seed, so that a failure can be repeated by its number. */
final class RandomPacks {
    private final SplittableRandom random;
    private final int series;

    RandomPacks(int seed) {
        random = new SplittableRandom(seed);
        series = 1 + random.nextInt(4);
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** One to three packs of the same cell count, with leads, sometimes bleed resistors, sometimes a balancer. */
    Bench bench(boolean bleeding) {
        List<PackCircuit> packs = new ArrayList<>();
        for (int pack = random.nextInt(3); pack >= 0; pack--) {
            List<SeriesGroup> groups = new ArrayList<>();
            double charge = between(0.4, 0.7);
            for (int place = 0; place < series; place++) {
                List<CellAt> side = new ArrayList<>();
                for (int cell = random.nextInt(2); cell >= 0; cell--) {
                    side.add(new CellAt(cell(bleeding), charge + between(-0.03, 0.03), between(288, 303)));
                }
                groups.add(new SeriesGroup(
                        side, bleeding && random.nextBoolean() ? between(20, 200) : Double.POSITIVE_INFINITY));
            }
            packs.add(new PackCircuit("pack " + (packs.size() + 1), groups, between(0.001, 0.02)));
        }
        Optional<Balancer> balancer = bleeding && random.nextBoolean()
                ? Optional.of(new Balancer(between(0.05, 0.4), between(0.5, 1), 0.003))
                : Optional.empty();
        return new Bench(packs, balancer, between(283, 303));
    }

    private CellCircuit cell(boolean lossy) {
        int rows = 2 + random.nextInt(20);
        double[] charge = new double[rows];
        double[] volts = new double[rows];
        double[] r0 = new double[rows];
        double[] r1 = new double[rows];
        double[] r2 = new double[rows];
        double total = 0;
        for (int row = 0; row < rows; row++) {
            charge[row] = row / (double) (rows - 1);
            total += row == 0 ? 0 : between(0.2, 1);
            volts[row] = total;
            r0[row] = between(0.003, 0.012);
            r1[row] = between(0.002, 0.008);
            r2[row] = between(0.002, 0.01);
        }
        for (int row = 0; row < rows; row++) {
            volts[row] = 3.3 + 0.9 * volts[row] / total;
        }
        return new CellCircuit(
                between(3600, 18_000),
                OpenCircuit.of(charge, volts),
                Resistances.of(charge, r0, r1, r2),
                between(500, 5000),
                between(5000, 50_000),
                new Arrhenius(between(0, 40_000)),
                new ThermalNode(between(20, 100), between(0, 0.3)),
                lossy && random.nextBoolean() ? between(0.7, 1) : 1);
    }

    /** Two to five steps of every kind, each bounded by a time and sometimes by volts as well. */
    Protocol protocol() {
        List<ProtocolStep> steps = new ArrayList<>();
        for (int step = 1 + random.nextInt(4); step >= 0; step--) {
            List<End> ends = new ArrayList<>();
            ends.add(End.after(between(5, 400)));
            ends.add(new End(EndKind.CELL_CHARGE_AT_MOST, 0.1));
            ends.add(new End(EndKind.CELL_CHARGE_AT_LEAST, 0.95));
            if (random.nextBoolean()) {
                ends.add(new End(EndKind.CELL_VOLTS_AT_MOST, between(3.3, 3.5)));
            }
            steps.add(new ProtocolStep("step " + steps.size(), demand(), ends, between(0.2, 2)));
        }
        return new Protocol(steps);
    }

    private Demand demand() {
        return switch (random.nextInt(6)) {
            case 0 -> new Demand.Rest();
            case 1 -> new Demand.Current(between(-5, 12));
            case 2 -> new Demand.Power(series * between(-15, 40));
            case 3 -> new Demand.Resistor(series * between(0.3, 3));
            default ->
                new Demand.Charge(
                        series * between(3.7, 4.2),
                        between(1, 6),
                        random.nextBoolean() ? Double.POSITIVE_INFINITY : series * between(5, 20),
                        between(0, 0.01));
        };
    }
}
