package fettle.engine.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;

/**
 * Looks through a trace for what went wrong.
 *
 * <p>Events of the same kind and cell less than five seconds apart are one. Volts limits hold per cell; where cells were
 * not logged, the pack's volts are held against as many times the limit. Currents and temperatures are held against the
 * limit itself; over-charge is told from 5 mV a cell above it, the scatter of a charger that regulates on the limit.
 * A cell collapses if it lies 0.3 V or more below the middle of the others for half a second. Figures without source:
 * common practice.
 */
public final class EventSearch {
    private static final double BRIDGE_SECONDS = 5;
    private static final double REGULATION_VOLTS = 0.005;
    private static final double COLLAPSE_VOLTS = 0.3;
    private static final double COLLAPSE_SECONDS = 0.5;

    private final Trace trace;
    private final TraceLimits limits;
    private final List<TraceEvent> events = new ArrayList<>();

    private EventSearch(Trace trace, TraceLimits limits) {
        this.trace = trace;
        this.limits = limits;
    }

    /** The events of a trace, in order of time. */
    public static List<TraceEvent> of(Trace trace, List<Segment> segments, TraceLimits limits) {
        EventSearch search = new EventSearch(trace, limits);
        search.volts();
        search.current();
        search.temperature();
        search.collapse();
        search.events.addAll(ResistanceSteps.of(trace, segments));
        search.events.sort(Comparator.comparingDouble(TraceEvent::atSeconds)
                .thenComparing(TraceEvent::kind)
                .thenComparingInt(TraceEvent::cell));
        return List.copyOf(search.events);
    }

    private void volts() {
        for (int cell = 1; cell <= trace.cells(); cell++) {
            double[] volts = trace.cellVolts()[cell - 1];
            below(EventKind.UNDER_VOLTAGE, cell, volts, limits.lowestCellVolts());
            above(EventKind.OVER_CHARGE, cell, volts, limits.highestCellVolts(), REGULATION_VOLTS);
        }
        if (trace.cells() == 0 && trace.hasVolts()) {
            int cells = limits.cellsInSeries();
            below(EventKind.UNDER_VOLTAGE, 0, trace.packVolts(), cells * limits.lowestCellVolts());
            above(
                    EventKind.OVER_CHARGE,
                    0,
                    trace.packVolts(),
                    cells * limits.highestCellVolts(),
                    cells * REGULATION_VOLTS);
        }
    }

    private void current() {
        if (!trace.hasCurrent()) {
            return;
        }
        double[] amps = trace.currentAmps();
        Double most = limits.dischargeAmps();
        if (most != null) {
            above(EventKind.OVER_CURRENT, 0, amps, most, 0);
        }
        Double mostIn = limits.chargeAmps();
        if (mostIn != null) {
            double allowed = mostIn;
            tell(EventKind.OVER_CHARGE_CURRENT, 0, i -> -amps[i] > allowed, i -> -amps[i], allowed);
        }
    }

    private void temperature() {
        if (!trace.hasTemperature()) {
            return;
        }
        double[] kelvins = trace.temperatureKelvins();
        above(EventKind.OVER_TEMPERATURE, 0, kelvins, limits.hottestKelvins(), 0);
        if (trace.hasCurrent()) {
            double load = Segmentation.loadAmps(trace);
            double[] amps = trace.currentAmps();
            double coldest = limits.coldestChargeKelvins();
            double warmest = limits.warmestChargeKelvins();
            tell(EventKind.CHARGED_COLD, 0, i -> amps[i] < -load && kelvins[i] < coldest, i -> -kelvins[i], coldest);
            tell(EventKind.CHARGED_HOT, 0, i -> amps[i] < -load && kelvins[i] > warmest, i -> kelvins[i], warmest);
        }
    }

    private void collapse() {
        for (int cell = 1; cell <= trace.cells() && trace.cells() > 1; cell++) {
            double[] volts = trace.cellVolts()[cell - 1];
            int own = cell - 1;
            for (Stretch stretch : Stretch.where(
                    trace.timeSeconds(), BRIDGE_SECONDS, i -> volts[i] < othersMiddle(own, i) - COLLAPSE_VOLTS)) {
                if (seconds(stretch) >= COLLAPSE_SECONDS) {
                    int worst = worst(stretch, i -> othersMiddle(own, i) - volts[i]);
                    add(EventKind.CELL_COLLAPSE, cell, stretch, volts[worst], othersMiddle(own, worst));
                }
            }
        }
    }

    /** Middle of the other cells' volts at one sample: the median; of two, the lower. */
    private double othersMiddle(int own, int sample) {
        double[] others = new double[trace.cells() - 1];
        int count = 0;
        for (int cell = 0; cell < trace.cells(); cell++) {
            if (cell != own) {
                others[count++] = trace.cellVolts()[cell][sample];
            }
        }
        Arrays.sort(others);
        return others[(others.length - 1) / 2];
    }

    private void below(EventKind kind, int cell, double[] values, double limit) {
        tell(kind, cell, i -> values[i] < limit, i -> -values[i], limit);
    }

    private void above(EventKind kind, int cell, double[] values, double limit, double margin) {
        tell(kind, cell, i -> values[i] > limit + margin, i -> values[i], limit);
    }

    /** @param badness rises with how bad a sample is; its size is the value told */
    private void tell(EventKind kind, int cell, IntPredicate holds, IntToDoubleFunction badness, double limit) {
        for (Stretch stretch : Stretch.where(trace.timeSeconds(), BRIDGE_SECONDS, holds)) {
            int worst = worst(stretch, badness);
            add(kind, cell, stretch, Math.abs(badness.applyAsDouble(worst)), limit);
        }
    }

    private void add(EventKind kind, int cell, Stretch stretch, double worst, double limit) {
        events.add(new TraceEvent(kind, cell, trace.timeSeconds()[stretch.from()], seconds(stretch), worst, limit));
    }

    private double seconds(Stretch stretch) {
        return trace.timeSeconds()[stretch.to() - 1] - trace.timeSeconds()[stretch.from()];
    }

    private static int worst(Stretch stretch, IntToDoubleFunction badness) {
        int worst = stretch.from();
        for (int i = stretch.from(); i < stretch.to(); i++) {
            worst = badness.applyAsDouble(i) > badness.applyAsDouble(worst) ? i : worst;
        }
        return worst;
    }
}
