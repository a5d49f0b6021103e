package fettle.engine.pack.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.cell.circuit.CellCircuit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws that hold whatever the pack and the protocol: nothing is made or lost, and finer steps change nothing. */
class SimulationLawsTest {
    static IntStream seeds() {
        return IntStream.range(0, 300);
    }

    /** Chemical energy of a cell follows from its curve alone: Q·∫rest dz. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void energyIsConservedToABillionth(int seed) {
        RandomPacks packs = new RandomPacks(seed);
        Bench bench = packs.bench(true);
        Summary summary = Simulation.run(bench, packs.protocol());
        List<CellAt> cells = bench.cells().toList();
        double given = 0;
        double turned = 0;
        for (int cell = 0; cell < cells.size(); cell++) {
            CellCircuit circuit = cells.get(cell).circuit();
            double from = cells.get(cell).chargeFraction();
            double to = summary.cells().get(cell).chargeFraction();
            double joules =
                    circuit.capacityCoulombs() * (from - to) * circuit.rest().meanVolts(from, to);
            given += joules;
            turned += Math.abs(joules);
        }
        Passed passed = summary.passed();
        turned += passed.outJoules() + passed.inJoules() + Math.abs(passed.lostJoules());
        assertThat(given)
                .isCloseTo(passed.outJoules() - passed.inJoules() + passed.lostJoules(), within(1e-9 * turned + 1e-12));
    }

    /** Without bleed and charge loss, every place of a string passes its pack's charge, and packs add to the terminals. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void chargeIsConservedToABillionth(int seed) {
        RandomPacks packs = new RandomPacks(seed);
        Bench bench = packs.bench(false);
        Summary summary = Simulation.run(bench, packs.protocol());
        double total = 0;
        double turned = 0;
        int cell = 0;
        for (PackCircuit pack : bench.packs()) {
            double first = Double.NaN;
            for (SeriesGroup group : pack.groups()) {
                double given = 0;
                for (CellAt at : group.cells()) {
                    given += at.circuit().capacityCoulombs()
                            * (at.chargeFraction() - summary.cells().get(cell++).chargeFraction());
                }
                first = Double.isNaN(first) ? given : first;
                turned += Math.abs(given);
                assertThat(given).as(pack.name()).isCloseTo(first, within(1e-9 * Math.abs(first) + 1e-7));
            }
            total += first;
        }
        Passed passed = summary.passed();
        turned += passed.outCoulombs() + passed.inCoulombs();
        assertThat(total).isCloseTo(passed.outCoulombs() - passed.inCoulombs(), within(1e-9 * turned + 1e-9));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void halvingTheStepChangesNoKeyFigureByATenthOfAPercent(int seed) {
        RandomPacks packs = new RandomPacks(seed);
        Bench bench = packs.bench(false);
        Protocol protocol = packs.protocol();
        double[] coarse = keyFigures(Simulation.run(bench, protocol));
        double[] fine = keyFigures(Simulation.run(bench, protocol.withStepsTimes(0.5)));
        assertThat(coarse).hasSameSizeAs(fine);
        for (int figure = 0; figure < fine.length; figure++) {
            assertThat(coarse[figure])
                    .as("figure %d", figure)
                    .isCloseTo(fine[figure], within(1e-3 * Math.abs(fine[figure]) + 1e-3));
        }
    }

    private static double[] keyFigures(Summary summary) {
        Passed passed = summary.passed();
        return IntStream.range(0, summary.cells().size())
                .mapToObj(summary.cells()::get)
                .flatMapToDouble(end -> DoubleStream.of(end.volts(), end.chargeFraction(), end.kelvins()))
                .collect(
                        () -> new ArrayList<>(List.of(
                                summary.seconds(),
                                passed.outCoulombs(),
                                passed.inCoulombs(),
                                passed.outJoules(),
                                passed.inJoules(),
                                passed.lostJoules(),
                                summary.lowestCellVolts().value(),
                                summary.highestCellVolts().value(),
                                summary.hottestKelvins().value())),
                        (list, value) -> list.add(value),
                        (a, b) -> a.addAll(b))
                .stream()
                .mapToDouble(Double::doubleValue)
                .toArray();
    }
}
