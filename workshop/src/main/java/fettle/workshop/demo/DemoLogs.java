package fettle.workshop.demo;

import fettle.engine.pack.Pack;
import fettle.engine.pack.model.CellModel;
import fettle.engine.pack.model.Circuits;
import fettle.engine.pack.model.PackModel;
import fettle.engine.pack.simulation.Demand;
import fettle.engine.pack.simulation.End;
import fettle.engine.pack.simulation.Moment;
import fettle.engine.pack.simulation.Progress;
import fettle.engine.pack.simulation.Protocol;
import fettle.engine.pack.simulation.ProtocolStep;
import fettle.engine.pack.simulation.Simulation;
import fettle.engine.units.TradeUnit;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Logs of invented flights, as a logger in the craft would write them: made by simulating the pack, with the scatter and the
 * steps of a real logger's figures.
 */
final class DemoLogs {
    private static final double SAMPLE_SECONDS = 0.5;
    private static final double REST_BEFORE_SECONDS = 120;
    private static final double REST_AFTER_SECONDS = 900;
    private static final double STEP_SECONDS = 6;

    /** Throttle of a lap, flown over and over [A]. */
    private static final double[] LAP_AMPS = {14, 30, 19, 52, 22, 10, 26, 34};

    private static final double VOLTS_SCATTER = 0.0015;
    private static final double AMPS_SCATTER = 0.08;

    private DemoLogs() {}

    /**
     * One flight.
     *
     * @param begun the instant of its first sample
     * @param seconds time in the air [s]
     * @param cellOhms resistance of each cell [Ω]
     * @param charge charge of each cell at the start
     * @param capacityShare what it holds, as a share of its label
     */
    record Flight(Pack pack, Instant begun, double seconds, double[] cellOhms, double[] charge, double capacityShare) {}

    /** The log as text, semicolons between its columns. */
    static String text(Flight flight) {
        StringBuilder text = new StringBuilder("time;pack [V];");
        for (int cell = 1; cell <= flight.pack().cellsInSeries(); cell++) {
            text.append("cell ").append(cell).append(" [V];");
        }
        text.append("current [A];temperature [°C]\n");
        double[] next = {0};
        Simulation.run(
                Circuits.bench(model(flight), Optional.empty()),
                protocol(flight.seconds()),
                now -> {
                    if (now.seconds() >= next[0] - SAMPLE_SECONDS / 10) {
                        append(text, flight.begun(), now);
                        next[0] += SAMPLE_SECONDS;
                    }
                },
                SAMPLE_SECONDS,
                Progress.silent());
        return text.toString();
    }

    private static PackModel model(Flight flight) {
        List<CellModel> cells = new ArrayList<>();
        for (int cell = 0; cell < flight.pack().cellsInSeries(); cell++) {
            cells.add(new CellModel(
                    flight.charge()[cell],
                    flight.capacityShare() * flight.pack().ratedCapacityCoulombs(),
                    flight.cellOhms()[cell]));
        }
        return PackModel.uniform(
                        flight.pack().tag(),
                        flight.pack().chemistry(),
                        cells.size(),
                        flight.pack().ratedCapacityCoulombs(),
                        1,
                        flight.cellOhms()[0])
                .withCells(cells);
    }

    private static Protocol protocol(double seconds) {
        List<ProtocolStep> steps = new ArrayList<>();
        steps.add(rest("before", REST_BEFORE_SECONDS));
        for (int step = 0; step * STEP_SECONDS < seconds; step++) {
            steps.add(ProtocolStep.of(
                    "throttle " + step,
                    new Demand.Current(LAP_AMPS[step % LAP_AMPS.length]),
                    SAMPLE_SECONDS,
                    End.after(STEP_SECONDS)));
        }
        steps.add(rest("after", REST_AFTER_SECONDS));
        return new Protocol(steps);
    }

    private static ProtocolStep rest(String name, double seconds) {
        return ProtocolStep.of(name, new Demand.Current(0), SAMPLE_SECONDS, End.after(seconds));
    }

    private static void append(StringBuilder text, Instant begun, Moment now) {
        long sample = Math.round(now.seconds() / SAMPLE_SECONDS);
        double sum = 0;
        StringBuilder cells = new StringBuilder();
        for (int cell = 0; cell < now.cells(); cell++) {
            double volts = now.cellVolts(cell) + VOLTS_SCATTER * scatter(sample, cell);
            sum += volts;
            cells.append(String.format(Locale.ROOT, "%.3f;", volts));
        }
        text.append(begun.plus(Math.round(1000 * now.seconds()), ChronoUnit.MILLIS))
                .append(String.format(Locale.ROOT, ";%.2f;", sum))
                .append(cells)
                .append(String.format(
                        Locale.ROOT,
                        "%.2f;%.1f%n",
                        now.amps() + AMPS_SCATTER * scatter(sample, 31),
                        TradeUnit.CELSIUS.fromSi(now.hottestKelvins())));
    }

    /** −1 … 1, the same for the same sample and column, without a pattern a fit could follow. */
    private static double scatter(long sample, int column) {
        double seed = Math.sin(12.9898 * (sample + 1) + 78.233 * (column + 1)) * 43_758.5453;
        return 2 * (seed - Math.floor(seed)) - 1;
    }
}
