package fettle.engine.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What makes a trace less trustworthy or less complete than it looks, in sentences. */
final class Oddities {
    private static final double STUCK_SECONDS = 60;
    private static final int STUCK_SAMPLES = 20;
    private static final double JUMP_SHARE = 0.02;

    private final Trace trace;
    private final List<String> found = new ArrayList<>();

    private Oddities(Trace trace) {
        this.trace = trace;
    }

    static List<String> of(Trace trace, List<Segment> segments) {
        Oddities oddities = new Oddities(trace);
        oddities.missing();
        oddities.constant("pack volts", trace.packVolts());
        oddities.constant("current", trace.currentAmps());
        oddities.constant("temperature", trace.temperatureKelvins());
        for (int cell = 1; cell <= trace.cells(); cell++) {
            oddities.constant("cell " + cell + "'s volts", trace.cellVolts()[cell - 1]);
        }
        oddities.stuckCurrent();
        PackSwap.first(trace, segments).ifPresent(swap -> oddities.found.add(swap.sentence() + "."));
        return List.copyOf(oddities.found);
    }

    private void missing() {
        if (!trace.hasCurrent()) {
            found.add("no current was logged: charge, energy and resistance cannot be known; volts alone are used.");
        }
        if (!trace.hasVolts()) {
            found.add("no volts were logged: energy, limits of volts and resistance cannot be known.");
        }
        if (!trace.hasTemperature()) {
            found.add("no temperature was logged: heat and charging in the cold cannot be told.");
        }
    }

    private void constant(String what, double[] values) {
        if (values.length < 2) {
            return;
        }
        for (double value : values) {
            if (value != values[0]) {
                return;
            }
        }
        found.add(what + " never changes in " + values.length + " samples: the sensor may not be connected.");
    }

    /** The current at one exact value above rest for long while the volts move. */
    private void stuckCurrent() {
        if (!trace.hasCurrent() || !trace.hasVolts()) {
            return;
        }
        double[] amps = trace.currentAmps();
        double[] time = trace.timeSeconds();
        double load = Segmentation.loadAmps(trace);
        int from = 0;
        for (int i = 1; i <= amps.length; i++) {
            if (i < amps.length && amps[i] == amps[from]) {
                continue;
            }
            double seconds = time[i - 1] - time[from];
            boolean many = i - from >= STUCK_SAMPLES && seconds >= STUCK_SECONDS;
            if (many && Math.abs(amps[from]) > load && jumps(from, i)) {
                found.add(String.format(
                        Locale.ROOT,
                        "current stays at exactly %.3f A for %.0f s from %.1f s while the volts jump: the sensor may have"
                                + " stuck.",
                        amps[from],
                        seconds,
                        time[from]));
            }
            from = i;
        }
    }

    /** Whether the volts move by more than 2 % from one sample to the next. */
    private boolean jumps(int from, int to) {
        double[] volts = trace.packVolts();
        for (int i = from + 1; i < to; i++) {
            if (Math.abs(volts[i] - volts[i - 1]) > JUMP_SHARE * volts[i]) {
                return true;
            }
        }
        return false;
    }
}
