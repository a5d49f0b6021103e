package fettle.engine.health;

import fettle.engine.cell.DefaultCurves;
import fettle.engine.cell.RestCurve;
import fettle.engine.cell.circuit.Arrhenius;
import fettle.engine.health.capacity.CapacityPrior;
import fettle.engine.health.identification.CellBelief;
import fettle.engine.health.identification.Identification;
import fettle.engine.health.identification.IdentifiedCircuit;
import fettle.engine.health.identification.LoadWindow;
import fettle.engine.health.identification.PairCount;
import fettle.engine.health.identification.TemperatureLaw;
import fettle.engine.pack.Pack;
import fettle.engine.trace.Segment;
import fettle.engine.trace.SegmentKind;
import fettle.engine.trace.Segmentation;
import fettle.engine.trace.Trace;
import fettle.engine.units.Estimate;
import fettle.engine.units.InputException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What one trace says of its pack's resistance, from its longest run and the rest just before it.
 *
 * @param cells one answer per logged cell, or one for the mean cell
 * @param remarks what was assumed
 */
public record TraceHealth(List<CellResistance> cells, List<String> remarks) {
    private static final double REST_BEFORE_SECONDS = 30;
    private static final double RESTED_VOLTS = 0.01; // a rest of seconds to minutes still settles by about this
    private static final double LOADED_VOLTS = 0.1; // first volts of a log that begins under load
    private static final double TEN_SECONDS = 10;

    public TraceHealth {
        cells = List.copyOf(cells);
        remarks = List.copyOf(remarks);
    }

    /** The health a trace shows; nothing but a remark where there is no run with a current. */
    public static TraceHealth of(Trace trace, Pack pack) {
        if (!trace.hasCurrent()) {
            return new TraceHealth(
                    List.of(), List.of("no current was logged: resistance cannot be told from volts alone"));
        }
        List<Segment> segments = Segmentation.of(trace);
        return longestRun(trace, segments)
                .map(run -> new Look(trace, pack, segments, run).health())
                .orElse(new TraceHealth(List.of(), List.of("there is no run in it: resistance needs a load")));
    }

    /**
     * The same, and what each cell's charge came to through the run, followed reading by reading with the cell's own circuit; where
     * a cell stops behaving like that circuit it is said when.
     *
     * @param trace the trace this was found in
     * @param pack its pack
     */
    public TraceHealth withCharge(Trace trace, Pack pack) {
        List<String> told = new ArrayList<>(remarks);
        List<Segment> segments = trace.hasCurrent() ? Segmentation.of(trace) : List.of();
        longestRun(trace, segments).ifPresent(run -> {
            Look look = new Look(trace, pack, segments, run);
            cells.stream()
                    .filter(cell -> cell.circuit() != null)
                    .map(look::charge)
                    .forEach(told::add);
        });
        return new TraceHealth(cells, told);
    }

    private static Optional<Segment> longestRun(Trace trace, List<Segment> segments) {
        return segments.stream()
                .filter(segment -> segment.kind() == SegmentKind.RUN)
                .max(Comparator.comparingDouble(segment -> segment.durationSeconds(trace)));
    }

    /**
     * The samples that were identified: the longest run, with the half minute of rest before it.
     *
     * @param from first sample
     * @param to the sample after the last
     */
    record Window(int from, int to) {}

    /** The window of a trace that has a run. */
    static Window window(Trace trace) {
        List<Segment> segments = Segmentation.of(trace);
        Segment run = longestRun(trace, segments).orElseThrow();
        return new Window(from(trace, segments, run), run.to());
    }

    /** Half a minute of the rest before a run, where there is one. */
    private static int from(Trace trace, List<Segment> segments, Segment run) {
        int from = run.from();
        boolean rested =
                segments.stream().anyMatch(segment -> segment.kind() == SegmentKind.REST && segment.to() == run.from());
        double begin = trace.timeSeconds()[run.from()] - REST_BEFORE_SECONDS;
        while (rested && from > 0 && trace.timeSeconds()[from - 1] >= begin) {
            from--;
        }
        return from;
    }

    /** One run of one trace. */
    private record Look(Trace trace, Pack pack, List<Segment> segments, Segment run) {
        TraceHealth health() {
            List<String> remarks = new ArrayList<>();
            if (!hasTemperature()) {
                remarks.add("no temperature was logged: resistances are taken as of 25 °C");
            }
            List<CellResistance> cells = new ArrayList<>();
            if (trace.cells() == 0) {
                cells.add(cell(0, meanVolts()));
                remarks.add("cells were not logged: the answer is of the mean cell, leads and connector included");
            }
            for (int cell = 0; cell < trace.cells(); cell++) {
                cells.add(cell(cell + 1, trace.cellVolts()[cell]));
            }
            return new TraceHealth(cells, remarks);
        }

        String charge(CellResistance cell) {
            double[] volts = cell.number() == 0 ? meanVolts() : trace.cellVolts()[cell.number() - 1];
            return RunCharge.of(trace, volts, from(), run.to(), belief(volts), Objects.requireNonNull(cell.circuit()))
                    .sentence(cell.number() == 0 ? "the mean cell" : "cell " + cell.number());
        }

        private double[] meanVolts() {
            return Arrays.stream(trace.packVolts())
                    .map(volts -> volts / pack.cellsInSeries())
                    .toArray();
        }

        private CellResistance cell(int number, double[] volts) {
            try {
                IdentifiedCircuit found = Identification.of(window(volts), belief(volts), PairCount.AS_DATA_TELL);
                Estimate at25 = TemperatureLaw.USUAL.at(Arrhenius.REFERENCE_KELVINS, found.r0(), found.kelvins());
                return new CellResistance(number, found, at25, found.stepOhms(TEN_SECONDS), "");
            } catch (InputException cannotTell) {
                return new CellResistance(number, null, null, 0, String.valueOf(cannotTell.getMessage()));
            }
        }

        private LoadWindow window(double[] volts) {
            int from = from();
            int[] rows = IntStream.range(from, run.to())
                    .filter(row -> Double.isFinite(volts[row]))
                    .toArray();
            return LoadWindow.of(
                    Arrays.stream(rows)
                            .mapToDouble(row -> trace.timeSeconds()[row])
                            .toArray(),
                    Arrays.stream(rows)
                            .mapToDouble(row -> trace.currentAmps()[row])
                            .toArray(),
                    Arrays.stream(rows).mapToDouble(row -> volts[row]).toArray(),
                    kelvins());
        }

        private int from() {
            return TraceHealth.from(trace, segments, run);
        }

        private CellBelief belief(double[] volts) {
            RestCurve curve = DefaultCurves.of(pack.chemistry());
            CapacityPrior label = CapacityPrior.ofLabel(pack);
            int first = from();
            while (first < run.to() - 1 && !Double.isFinite(volts[first])) {
                first++;
            }
            double off = from() < run.from() ? RESTED_VOLTS : LOADED_VOLTS;
            double band = curve.bandVolts(curve.charge(volts[first]));
            return CellBelief.of(
                    curve,
                    volts[first],
                    Math.hypot(off, band),
                    new Estimate(label.coulombs(), label.deviation(), List.of()));
        }

        private boolean hasTemperature() {
            return trace.hasTemperature()
                    && Arrays.stream(trace.temperatureKelvins(), run.from(), run.to())
                            .anyMatch(Double::isFinite);
        }

        private double kelvins() {
            return hasTemperature()
                    ? Arrays.stream(trace.temperatureKelvins(), run.from(), run.to())
                            .filter(Double::isFinite)
                            .average()
                            .orElseThrow()
                    : Arrhenius.REFERENCE_KELVINS;
        }
    }
}
