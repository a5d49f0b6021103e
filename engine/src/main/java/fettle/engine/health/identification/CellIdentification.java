package fettle.engine.health.identification;

import fettle.engine.cell.circuit.Resistances;
import fettle.engine.units.InputException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A cell's resistances against charge, from several windows that share two time constants.
 *
 * <p>Separable least squares: for every pair of time constants on a ladder each window's resistances are linear; the pair with
 * the least sum of ln(squares) over all windows is taken, so that a window the circuit explains badly does not drown the rest. Rows weigh by the time they stand for; spikes are left out on a second look.
 */
public final class CellIdentification {
    private static final double RUNG = 1.3;
    private static final double LEAST_RATIO = 4;
    private static final double MOST_WEIGHT_SECONDS = 2;
    private static final double LEAST_OHMS = 1e-6; // a pair the window does not show still has to be a resistance

    private CellIdentification() {}

    /**
     * One window with what is believed of the cell at its start.
     *
     * @param window the log
     * @param belief curve, start charge, capacity
     */
    public record Level(LoadWindow window, CellBelief belief) {}

    /**
     * The cell's circuit.
     *
     * @param levels windows at different charges, all of the same cell and belief of capacity
     * @param law with which resistances are brought to 25 °C
     */
    public static IdentifiedCell of(List<Level> levels, TemperatureLaw law) {
        if (levels.isEmpty()) {
            throw new InputException(
                    "windows", "there is no window of the log. Give at least one with a changing load.");
        }
        double delay = delay(levels);
        double[] taus = ladder(levels);
        List<double[]> weights = levels.stream()
                .map(level -> level.window().timeWeights(MOST_WEIGHT_SECONDS))
                .toList();
        List<CircuitPoint> rough = shared(levels, taus, weights, delay);
        leaveOutSpikes(levels, rough, weights);
        List<CircuitPoint> found = shared(levels, taus, weights, delay);
        return joined(levels, found, law, delay);
    }

    private static List<CircuitPoint> shared(List<Level> levels, double[] taus, List<double[]> weights, double delay) {
        List<StartSearch> searches = new ArrayList<>();
        for (int i = 0; i < levels.size(); i++) {
            Level level = levels.get(i);
            LoadColumns load = new LoadColumns(level.window(), level.belief(), delay, weights.get(i), taus);
            searches.add(StartSearch.at(load, level.belief()));
        }
        double least = Double.POSITIVE_INFINITY;
        int[] best = {0, taus.length - 1};
        for (int quick = 0; quick < taus.length; quick++) {
            for (int slow = quick + 1; slow < taus.length; slow++) {
                if (taus[slow] / taus[quick] >= LEAST_RATIO) {
                    int[] chosen = {quick, slow};
                    double cost = searches.stream()
                            .mapToDouble(search -> Math.log(search.cost(chosen)))
                            .sum();
                    if (cost < least) {
                        least = cost;
                        best = chosen;
                    }
                }
            }
        }
        int[] chosen = best;
        return searches.stream().map(search -> search.point(chosen)).toList();
    }

    private static void leaveOutSpikes(List<Level> levels, List<CircuitPoint> rough, List<double[]> weights) {
        for (int i = 0; i < levels.size(); i++) {
            LoadWindow window = levels.get(i).window();
            double[] left = new CircuitModel(window, levels.get(i).belief().curve()).volts(rough.get(i));
            for (int row = 0; row < left.length; row++) {
                left[row] = window.volts(row) - left[row];
            }
            boolean[] jumps = Spikes.in(left);
            for (int row = 0; row < left.length; row++) {
                weights.get(i)[row] = jumps[row] ? 0 : weights.get(i)[row];
            }
        }
    }

    private static IdentifiedCell joined(
            List<Level> levels, List<CircuitPoint> found, TemperatureLaw law, double delay) {
        record Row(double charge, double[] ohms) {}
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < levels.size(); i++) {
            double factor = law.factor(levels.get(i).window().kelvins());
            double[] ohms = found.get(i).ohms().clone();
            for (int which = 0; which < ohms.length; which++) {
                ohms[which] = Math.max(LEAST_OHMS, ohms[which]) / factor;
            }
            rows.add(new Row(found.get(i).startCharge(), ohms));
        }
        rows.sort(Comparator.comparingDouble(Row::charge));
        double[] charge = rows.stream().mapToDouble(Row::charge).toArray();
        Resistances resistances = Resistances.of(
                charge,
                rows.stream().mapToDouble(row -> row.ohms()[0]).toArray(),
                rows.stream().mapToDouble(row -> row.ohms()[1]).toArray(),
                rows.stream().mapToDouble(row -> row.ohms()[2]).toArray());
        CellBelief belief = levels.get(0).belief();
        double[] logTau = found.get(0).logTau();
        return new IdentifiedCell(
                belief.curve(),
                belief.capacityCoulombs().value(),
                resistances,
                Math.exp(logTau[0]),
                Math.exp(logTau[1]),
                law,
                delay);
    }

    /** Median of what the windows say. */
    private static double delay(List<Level> levels) {
        double[] delays = levels.stream()
                .mapToDouble(level -> SensorDelay.of(level.window()))
                .sorted()
                .toArray();
        return delays[delays.length / 2];
    }

    private static double[] ladder(List<Level> levels) {
        double step = levels.stream()
                .mapToDouble(level -> level.window().stepSeconds())
                .min()
                .orElseThrow();
        double duration = levels.stream()
                .mapToDouble(level -> level.window().durationSeconds())
                .max()
                .orElseThrow();
        List<Double> rungs = new ArrayList<>();
        for (double tau = 2 * step; tau < 0.3 * duration; tau *= RUNG) {
            rungs.add(tau);
        }
        return rungs.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
