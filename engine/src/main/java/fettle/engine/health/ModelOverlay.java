package fettle.engine.health;

import fettle.engine.cell.DefaultCurves;
import fettle.engine.cell.RestCurve;
import fettle.engine.health.identification.IdentifiedCircuit;
import fettle.engine.health.identification.IdentifiedPair;
import fettle.engine.pack.Pack;
import fettle.engine.trace.Trace;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Pack volts as the circuits found in a trace's longest run say they should be, sample by sample, beside what was logged.
 *
 * <p>Formula, cell by cell: V = ocv(z₀ − q/Q) − i·R0 − Σ Rk·xk with xk the current smoothed by τk; the sum over the cells, or
 * the mean cell times their number. Only where the run was identified; {@code NaN} elsewhere.
 *
 * @param volts of the pack by the model [V]
 * @param residualVolts logged less model [V]
 */
public record ModelOverlay(double[] volts, double[] residualVolts) {

    /** The overlay of a trace; empty where not every cell could be identified or no pack volts were logged. */
    public static Optional<ModelOverlay> of(Trace trace, Pack pack, TraceHealth health) {
        List<IdentifiedCircuit> circuits = health.cells().stream()
                .map(CellResistance::circuit)
                .filter(Objects::nonNull)
                .toList();
        if (circuits.isEmpty() || circuits.size() < health.cells().size() || !trace.hasVolts()) {
            return Optional.empty();
        }
        TraceHealth.Window window = TraceHealth.window(trace);
        RestCurve curve = DefaultCurves.of(pack.chemistry());
        double times = circuits.size() == 1 ? pack.cellsInSeries() : 1;
        double[] model = new double[trace.size()];
        Arrays.fill(model, Double.NaN);
        Arrays.fill(model, window.from(), window.to(), 0);
        for (IdentifiedCircuit circuit : circuits) {
            add(trace, window, circuit, curve, times, model);
        }
        double[] residual = new double[trace.size()];
        for (int i = 0; i < residual.length; i++) {
            residual[i] = trace.packVolts()[i] - model[i];
        }
        return Optional.of(new ModelOverlay(model, residual));
    }

    private static void add(
            Trace trace,
            TraceHealth.Window window,
            IdentifiedCircuit circuit,
            RestCurve curve,
            double times,
            double[] into) {
        double[] time = trace.timeSeconds();
        double delay = circuit.delaySeconds().value();
        double capacity = circuit.capacityCoulombs().value();
        double[] smoothed = new double[circuit.pairs().size()];
        double counted = 0;
        double before = amps(trace, time[window.from()] - delay);
        for (int i = window.from(); i < window.to(); i++) {
            double amps = amps(trace, time[i] - delay);
            if (i > window.from()) {
                double step = time[i] - time[i - 1];
                counted += 0.5 * (before + amps) * step;
                for (int k = 0; k < smoothed.length; k++) {
                    double ratio = step / circuit.pairs().get(k).seconds().value();
                    double stays = Math.exp(-ratio);
                    double mean = -Math.expm1(-ratio) / ratio;
                    smoothed[k] = stays * smoothed[k] + (mean - stays) * before + (1 - mean) * amps;
                }
            }
            double volts = curve.volts(circuit.startCharge().value() - counted / capacity)
                    - amps * circuit.r0().value();
            for (int k = 0; k < smoothed.length; k++) {
                IdentifiedPair pair = circuit.pairs().get(k);
                volts -= pair.ohms().value() * smoothed[k];
            }
            into[i] += times * volts;
            before = amps;
        }
    }

    /** The current at a time, on the straight line between samples. */
    private static double amps(Trace trace, double seconds) {
        double[] time = trace.timeSeconds();
        double[] amps = trace.currentAmps();
        int at = Arrays.binarySearch(time, seconds);
        if (at >= 0) {
            return amps[at];
        }
        int after = -at - 1;
        if (after == 0 || after == time.length) {
            return amps[Math.min(after, time.length - 1)];
        }
        double share = (seconds - time[after - 1]) / (time[after] - time[after - 1]);
        return amps[after - 1] + share * (amps[after] - amps[after - 1]);
    }
}
