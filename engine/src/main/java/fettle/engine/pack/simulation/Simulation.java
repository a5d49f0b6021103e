package fettle.engine.pack.simulation;

import fettle.engine.units.InputException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

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

    private static final double SAME_TIME = 1e-9;
    private static final double LEAST_CHARGE = -0.5;
    private static final double MOST_CHARGE = 1.5;
    private static final double STILL_CHARGE = 1e-12;
    private static final double STILL_KELVINS = 1e-7;
    private static final double SECONDS_PER_MINUTE = 60;

    private final Bench bench;
    private final Protocol protocol;
    private final Network network;
    private final Recorder recorder;
    private final double sampleSeconds;
    private final Progress progress;
    private final Peaks peaks = new Peaks();
    private long sample = 1;
    private double[] lastLook = {};

    private Simulation(Bench bench, Protocol protocol, Recorder recorder, double sampleSeconds, Progress progress) {
        this.bench = bench;
        this.protocol = protocol;
        this.recorder = recorder;
        this.sampleSeconds = sampleSeconds;
        this.progress = progress;
        this.network = new Network(bench);
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
        refuseUnlessFinite(step);
        peaks.watch(network);
        recorder.take(network);
        StepOutcome.Terminals first = terminals();
        List<StepOutcome.LimitChange> limits = new ArrayList<>();
        Demand.Limit limit = network.limit();
        if (limit != Demand.Limit.NONE) {
            limits.add(new StepOutcome.LimitChange(network.seconds(), limit));
        }
        lastLook = new double[0];
        while (endMet(step) == null) {
            advance(step, limit);
            if (network.limit() != limit) {
                limit = network.limit();
                limits.add(new StepOutcome.LimitChange(network.seconds(), limit));
            }
            if (network.tally().steps() % STEPS_BETWEEN_LOOKS == 0) {
                look(step);
            }
        }
        recorder.take(network);
        return new StepOutcome(
                step.name(),
                Objects.requireNonNull(endMet(step)),
                network.beganSeconds(),
                network.seconds(),
                first,
                terminals(),
                network.tally().passed().since(before),
                limits);
    }

    /** One time step, cut short at a sample, at the end of the protocol step and at a change of limit. */
    private void advance(ProtocolStep step, Demand.Limit limit) {
        double now = network.seconds();
        double nextSample = sampleSeconds * sample;
        double target = Math.min(nextSample, timeEnd(step));
        double dt = step.stepSeconds();
        boolean reaches = target - now <= dt * (1 + SAME_TIME);
        if (reaches && Math.abs(target - now - dt) > dt * SAME_TIME) {
            dt = target - now;
        }
        network.attempt(dt);
        refuseUnlessFinite(step);
        if (changed(step, limit)) {
            double at = locate(step, limit, dt);
            reaches &= at >= dt;
            dt = at;
        }
        network.accept(reaches ? target : now + dt);
        peaks.watch(network);
        if (reaches && target >= nextSample) {
            sample++;
            recorder.take(network);
        }
    }

    private boolean changed(ProtocolStep step, Demand.Limit limit) {
        return network.limit() != limit || conditionMet(step) != null;
    }

    private double locate(ProtocolStep step, Demand.Limit limit, double dt) {
        double before = 0;
        double after = dt;
        double finest = dt * SAME_TIME;
        for (int i = 0; i < HALVINGS && after - before > finest; i++) {
            double middle = 0.5 * (before + after);
            network.attempt(middle);
            if (changed(step, limit)) {
                after = middle;
            } else {
                before = middle;
            }
        }
        network.attempt(after);
        return after;
    }

    private double timeEnd(ProtocolStep step) {
        double earliest = Double.POSITIVE_INFINITY;
        for (End end : step.ends()) {
            if (end.kind() == EndKind.AFTER) {
                earliest = Math.min(earliest, network.beganSeconds() + end.value());
            }
        }
        return earliest;
    }

    /** The first condition met at the instant shown; times are compared with what was aimed at. */
    private @Nullable End endMet(ProtocolStep step) {
        End met = conditionMet(step);
        if (met != null) {
            return met;
        }
        for (End end : step.ends()) {
            if (end.kind() == EndKind.AFTER && network.seconds() >= network.beganSeconds() + end.value()) {
                return end;
            }
        }
        return null;
    }

    private @Nullable End conditionMet(ProtocolStep step) {
        List<End> ends = step.ends();
        for (int i = 0; i < ends.size(); i++) {
            End end = ends.get(i);
            if (end.kind() != EndKind.AFTER && end.met(network)) {
                return end;
            }
        }
        return null;
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

    /** Asks whether to go on, and refuses a step that has run away or come to a standstill. */
    private void look(ProtocolStep step) {
        if (!progress.goOn(network.seconds(), network.tally().steps())) {
            throw new CancelledException(network.seconds());
        }
        double[] present = new double[2 * network.cells()];
        for (int cell = 0; cell < network.cells(); cell++) {
            present[2 * cell] = network.cellCharge(cell);
            present[2 * cell + 1] = network.cellKelvins(cell);
            if (present[2 * cell] < LEAST_CHARGE || present[2 * cell] > MOST_CHARGE) {
                throw neverEnds(
                        step,
                        String.format(Locale.ROOT, "a cell has come to a charge of %.0f %%", 100 * present[2 * cell]));
            }
        }
        if (Double.isInfinite(timeEnd(step)) && standsStill(present)) {
            throw neverEnds(step, "nothing changes any more");
        }
        lastLook = present;
    }

    private boolean standsStill(double[] present) {
        if (lastLook.length == 0) {
            return false;
        }
        for (int cell = 0; cell < network.cells(); cell++) {
            if (Math.abs(present[2 * cell] - lastLook[2 * cell]) > STILL_CHARGE
                    || Math.abs(present[2 * cell + 1] - lastLook[2 * cell + 1]) > STILL_KELVINS) {
                return false;
            }
        }
        return Arrays.stream(present).allMatch(Double::isFinite);
    }

    private InputException neverEnds(ProtocolStep step, String why) {
        List<String> wanted = step.ends().stream().map(End::sentence).toList();
        return new InputException(
                "ends",
                String.format(
                        Locale.ROOT,
                        "step \"%s\" cannot end by %s: after %s in it %s (%.3f V, %.3f A, cells %.4f to %.4f V). Change the"
                                + " figure, or add a time.",
                        step.name(),
                        String.join(" or ", wanted),
                        clock(network.stepSeconds()),
                        why,
                        network.volts(),
                        network.amps(),
                        network.lowestCellVolts(),
                        network.highestCellVolts()));
    }

    private void refuseUnlessFinite(ProtocolStep step) {
        if (Double.isFinite(network.volts()) && Double.isFinite(network.amps())) {
            return;
        }
        String where = "step \"" + step.name() + "\" after " + clock(network.stepSeconds());
        if (step.demand() instanceof Demand.Power power) {
            throw new InputException(
                    "power",
                    String.format(
                            Locale.ROOT,
                            "%s asks for %.3f W; the packs can give at most %.3f W there. Ask for less, or end the step"
                                    + " at a higher voltage.",
                            where,
                            power.dischargeWatts(),
                            network.mostWatts()));
        }
        throw new InputException(
                "protocol",
                where + " has no finite answer. A source without resistance meets cells without resistance.");
    }

    private static String clock(double seconds) {
        return seconds < SECONDS_PER_MINUTE
                ? String.format(Locale.ROOT, "%.3f s", seconds)
                : String.format(Locale.ROOT, "%.1f min", seconds / SECONDS_PER_MINUTE);
    }
}
