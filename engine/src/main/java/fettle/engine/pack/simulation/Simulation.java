package fettle.engine.pack.simulation;

import fettle.engine.units.InputException;
import java.util.ArrayList;
import java.util.List;

/**
 * Runs a protocol on a bench.
 *
 * <p>A time step ends where a condition is first met or a limit takes over: located by halving to a billionth of the step.
 *
 * <p>Accuracy: second order in the time step while cells stay on one straight piece of their tables; see docs/accuracy.md.
 */
public final class Simulation {
    private static final int STEPS_BETWEEN_LOOKS = 8192;

    /** Halvings when locating an event: a billionth of a time step. */
    private static final int HALVINGS = 30;

    /** Changes located one right after the other; a limit that flickers faster is then followed step by step. */
    private static final int MOST_SHORTENED = 20;

    private static final double SAME_TIME = 1e-9;

    private final Bench bench;
    private final Protocol protocol;
    private final Network network;
    private final Recorder recorder;
    private final double sampleSeconds;
    private final Progress progress;
    private final Refusals refusals;
    private final Peaks peaks = new Peaks();
    private long sample = 1;
    private int shortened;

    private Simulation(Bench bench, Protocol protocol, Recorder recorder, double sampleSeconds, Progress progress) {
        this.bench = bench;
        this.protocol = protocol;
        this.recorder = recorder;
        this.sampleSeconds = sampleSeconds;
        this.progress = progress;
        this.network = new Network(bench);
        this.refusals = new Refusals(network);
    }

    /** Runs without recording. */
    public static Summary run(Bench bench, Protocol protocol) {
        return run(bench, protocol, Recorder.none(), Double.POSITIVE_INFINITY, Progress.silent());
    }

    /**
     * Runs a protocol.
     *
     * @param recorder takes instants
     * @param sampleSeconds time between samples [s], > 0; infinite for steps' ends alone
     * @param progress is asked now and then whether to go on
     * @throws InputException if a step can never end, or asks for what the packs cannot give
     * @throws CancelledException if progress said to stop
     */
    public static Summary run(
            Bench bench, Protocol protocol, Recorder recorder, double sampleSeconds, Progress progress) {
        if (!(sampleSeconds > 0)) {
            throw new InputException(
                    "sample_seconds", "time between samples is " + sampleSeconds + " s; expected more than 0 s.");
        }
        return new Simulation(bench, protocol, recorder, sampleSeconds, progress).run();
    }

    private Summary run() {
        List<StepOutcome> outcomes = new ArrayList<>();
        for (ProtocolStep step : protocol.steps()) {
            outcomes.add(run(step));
        }
        return new Summary(
                network.seconds(),
                outcomes,
                network.tally().passed(),
                cellEnds(),
                peaks.lowestVolts(),
                peaks.highestVolts(),
                peaks.lowestCellVolts(),
                peaks.highestCellVolts(),
                peaks.hottestKelvins(),
                peaks.largestAmps(),
                network.tally().steps());
    }

    private StepOutcome run(ProtocolStep step) {
        Passed before = network.tally().passed();
        network.begin(step.demand());
        refusals.unlessFinite(step);
        peaks.watch(network);
        recorder.take(network);
        StepOutcome.Terminals first = terminals();
        List<StepOutcome.LimitChange> limits = new ArrayList<>();
        Demand.Limit limit = network.limit();
        if (limit != Demand.Limit.NONE) {
            limits.add(new StepOutcome.LimitChange(network.seconds(), limit));
        }
        refusals.begin();
        Ending ending = new Ending(step, network.beganSeconds());
        End met = ending.met(network);
        while (met == null) {
            advance(step, limit, ending);
            if (network.limit() != limit) {
                limit = network.limit();
                limits.add(new StepOutcome.LimitChange(network.seconds(), limit));
            }
            if (network.tally().steps() % STEPS_BETWEEN_LOOKS == 0) {
                if (!progress.goOn(network.seconds(), network.tally().steps())) {
                    throw new CancelledException(network.seconds());
                }
                refusals.whenStill(step);
            }
            met = ending.met(network);
        }
        recorder.take(network);
        return new StepOutcome(
                step.name(),
                met,
                network.beganSeconds(),
                network.seconds(),
                first,
                terminals(),
                network.tally().passed().since(before),
                limits);
    }

    /** One time step, cut short at a sample, at the end of the protocol step and at a change of limit. */
    private void advance(ProtocolStep step, Demand.Limit limit, Ending ending) {
        double now = network.seconds();
        double nextSample = sampleSeconds * sample;
        double stepEnd = ending.atSeconds();
        double target = nextSample < stepEnd ? nextSample : stepEnd;
        double dt = step.stepSeconds();
        boolean reaches = target - now <= dt * (1 + SAME_TIME);
        if (reaches && Math.abs(target - now - dt) > dt * SAME_TIME) {
            dt = target - now;
        }
        network.attempt(dt);
        if (!changed(ending, limit)) {
            shortened = 0;
        } else if (shortened < MOST_SHORTENED || !Refusals.isFinite(network)) {
            double at = locate(ending, limit, dt);
            reaches &= at >= dt;
            dt = at;
            shortened++;
            refusals.unlessFinite(step);
        }
        network.accept(reaches ? target : now + dt);
        refusals.whenRunAway(step);
        peaks.watch(network);
        if (reaches && target >= nextSample) {
            sample++;
            recorder.take(network);
        }
    }

    private boolean changed(Ending ending, Demand.Limit limit) {
        return !Refusals.isFinite(network) || network.limit() != limit || ending.isMet(network);
    }

    private double locate(Ending ending, Demand.Limit limit, double dt) {
        double before = 0;
        double after = dt;
        double finest = dt * SAME_TIME;
        for (int i = 0; i < HALVINGS && after - before > finest; i++) {
            double middle = 0.5 * (before + after);
            network.attempt(middle);
            if (changed(ending, limit)) {
                after = middle;
            } else {
                before = middle;
            }
        }
        network.attempt(after);
        return after;
    }

    private StepOutcome.Terminals terminals() {
        List<Double> packAmps = new ArrayList<>();
        for (int pack = 0; pack < network.packs(); pack++) {
            packAmps.add(network.packAmps(pack));
        }
        return new StepOutcome.Terminals(network.volts(), network.amps(), packAmps);
    }

    private List<CellEnd> cellEnds() {
        List<CellEnd> ends = new ArrayList<>();
        int cell = 0;
        for (PackCircuit pack : bench.packs()) {
            int position = 1;
            for (SeriesGroup group : pack.groups()) {
                for (int side = 0; side < group.cells().size(); side++) {
                    ends.add(new CellEnd(
                            pack.name(),
                            position++,
                            network.cellVolts(cell),
                            network.cellRestVolts(cell),
                            network.cellCharge(cell),
                            network.cellKelvins(cell)));
                    cell++;
                }
            }
        }
        return ends;
    }
}
