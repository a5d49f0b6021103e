package fettle.planner.curve;

import fettle.engine.charge.answer.ChargeMeans;
import fettle.engine.pack.model.Circuits;
import fettle.engine.pack.model.PackModel;
import fettle.engine.pack.simulation.Demand;
import fettle.engine.pack.simulation.End;
import fettle.engine.pack.simulation.EndKind;
import fettle.engine.pack.simulation.Moment;
import fettle.engine.pack.simulation.Progress;
import fettle.engine.pack.simulation.Protocol;
import fettle.engine.pack.simulation.ProtocolStep;
import fettle.engine.pack.simulation.Simulation;
import fettle.engine.pack.simulation.Summary;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One simulated charge, sampled: time and power against the mean charge of its cells. */
final class SimulatedCharge {
    private static final double STEP_SECONDS = 2;
    private static final double SAMPLE_SECONDS = 10;

    /** A day: no charge of a sound pack takes longer. */
    private static final double LONGEST_SECONDS = 86_400;

    private static final int TRIES = 6;

    private final List<double[]> samples = new ArrayList<>();
    private double joules;
    private double highestCellVolts;

    /** Samples this near a border count on both sides of it. */
    private static final double NEAR = 0.01;

    private SimulatedCharge() {}

    /** No charge at all. */
    static SimulatedCharge nothing() {
        SimulatedCharge nothing = new SimulatedCharge();
        nothing.samples.add(new double[] {0, 1, 0});
        return nothing;
    }

    static SimulatedCharge filling(List<PackModel> packs, double start, double cellVolts, ChargeMeans means) {
        int cells = packs.get(0).cells().size();
        double packVolts = cells * cellVolts;
        SimulatedCharge charge = filling(packs, start, means, packVolts);
        for (int tried = 0; tried < TRIES && charge.highestCellVolts > cellVolts; tried++) {
            packVolts -= cells * (charge.highestCellVolts - cellVolts);
            charge = filling(packs, start, means, packVolts);
        }
        return charge;
    }

    private static SimulatedCharge filling(List<PackModel> packs, double start, ChargeMeans means, double packVolts) {
        Demand demand = new Demand.Charge(packVolts, means.amps(), means.watts(), 0);
        return run(
                packs,
                start,
                ProtocolStep.of(
                        "charge",
                        demand,
                        STEP_SECONDS,
                        new End(EndKind.CURRENT_AT_MOST, means.endAmps()),
                        End.after(LONGEST_SECONDS)));
    }

    static SimulatedCharge emptying(PackModel pack, double start, double amps) {
        End empty = new End(EndKind.CHARGE_PASSED, start * pack.leastCapacityCoulombs());
        ProtocolStep step = ProtocolStep.of(
                "to storage", new Demand.Current(amps), STEP_SECONDS, empty, End.after(LONGEST_SECONDS));
        return run(List.of(pack), start, step);
    }

    private static SimulatedCharge run(List<PackModel> packs, double start, ProtocolStep step) {
        SimulatedCharge charge = new SimulatedCharge();
        List<PackModel> begun =
                packs.stream().map(pack -> pack.withCharge(start)).toList();
        Summary summary = Simulation.run(
                Circuits.bench(begun, Optional.empty()),
                Protocol.of(step),
                charge::take,
                SAMPLE_SECONDS,
                Progress.silent());
        charge.highestCellVolts = summary.highestCellVolts().value();
        return charge;
    }

    /** Keeps time, mean charge and power. */
    private void take(Moment now) {
        double sum = 0;
        for (int cell = 0; cell < now.cells(); cell++) {
            sum += now.cellCharge(cell);
        }
        double watts = Math.abs(now.volts() * now.amps());
        if (!samples.isEmpty()) {
            double[] before = samples.get(samples.size() - 1);
            joules += 0.5 * (before[2] + watts) * (now.seconds() - before[0]);
        }
        samples.add(new double[] {now.seconds(), sum / now.cells(), watts});
    }

    /** How long it took [s]. */
    double seconds() {
        return samples.get(samples.size() - 1)[0];
    }

    /** Energy that passed [J]. */
    double joules() {
        return joules;
    }

    /** Most power between two charges [W]; 0 if it was never there. */
    double mostWatts(double low, double high) {
        return samples.stream()
                .filter(sample -> sample[1] >= low - NEAR && sample[1] <= high + NEAR)
                .mapToDouble(sample -> sample[2])
                .max()
                .orElse(0);
    }
}
