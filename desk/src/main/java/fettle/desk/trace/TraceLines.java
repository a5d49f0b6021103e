package fettle.desk.trace;

import fettle.engine.health.ModelOverlay;
import fettle.engine.trace.Trace;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The samples of a trace as a picture needs them: no more points than can be seen, none of the extremes lost.
 *
 * @param seconds time of each point [s]
 * @param lines one for each column, in trade units
 */
public record TraceLines(double[] seconds, List<Line> lines) {
    /**
     * One column.
     *
     * @param panel the picture it is drawn in: pack, cells, current or temperature
     * @param unit its unit's symbol
     * @param values one a point; {@code null} where nothing was logged
     */
    public record Line(
            String panel,
            String name,
            String unit,
            @Nullable Double[] values) {}

    /**
     * The part of a trace between two times. Where it has more samples than points, each stretch of samples becomes two
     * points: a column's least and greatest value in it, in the order they came.
     *
     * @param model volts by the circuits found; {@code null} where none were
     * @param most points wanted, ≥ 4
     */
    static TraceLines of(Trace trace, @Nullable ModelOverlay model, double fromSeconds, double toSeconds, int most) {
        double[] time = trace.timeSeconds();
        int from = 0;
        while (from < time.length - 1 && time[from + 1] < fromSeconds) {
            from++;
        }
        int to = time.length;
        while (to > from + 1 && time[to - 2] > toSeconds) {
            to--;
        }
        Cut cut = new Cut(from, to, Math.max(1, (int) Math.ceil(2.0 * (to - from) / most)));
        List<Line> lines = new ArrayList<>();
        if (trace.hasVolts()) {
            lines.add(line("pack", "pack", TradeUnit.VOLT, trace.packVolts(), cut));
        }
        if (model != null) {
            lines.add(line("pack", "model", TradeUnit.VOLT, model.volts(), cut));
            lines.add(line("residual", "residual", TradeUnit.MILLIVOLT, model.residualVolts(), cut));
        }
        for (int cell = 1; cell <= trace.cells(); cell++) {
            lines.add(line("cells", "cell " + cell, TradeUnit.VOLT, trace.cellVolts()[cell - 1], cut));
        }
        if (trace.hasCurrent()) {
            lines.add(line("current", "current", TradeUnit.AMPERE, trace.currentAmps(), cut));
        }
        if (trace.hasTemperature()) {
            lines.add(line("temperature", "temperature", TradeUnit.CELSIUS, trace.temperatureKelvins(), cut));
        }
        return new TraceLines(times(time, cut), lines);
    }

    /** @param stride samples a stretch; 1 for every sample as it is */
    private record Cut(int from, int to, int stride) {
        boolean whole() {
            return stride <= 2;
        }

        int stretches() {
            return (to - from + stride - 1) / stride;
        }
    }

    private static double[] times(double[] time, Cut cut) {
        if (cut.whole()) {
            return Arrays.copyOfRange(time, cut.from(), cut.to());
        }
        double[] points = new double[2 * cut.stretches()];
        for (int k = 0; k < cut.stretches(); k++) {
            int first = cut.from() + k * cut.stride();
            int last = Math.min(cut.to(), first + cut.stride()) - 1;
            points[2 * k] = time[first];
            points[2 * k + 1] = first == last ? time[first] : time[(first + last + 1) / 2];
        }
        return points;
    }

    private static Line line(String panel, String name, TradeUnit unit, double[] values, Cut cut) {
        @Nullable Double[] points = new Double[cut.whole() ? cut.to() - cut.from() : 2 * cut.stretches()];
        for (int k = 0; cut.whole() && k < points.length; k++) {
            points[k] = figure(values[cut.from() + k], unit);
        }
        for (int k = 0; !cut.whole() && k < cut.stretches(); k++) {
            int first = cut.from() + k * cut.stride();
            int last = Math.min(cut.to(), first + cut.stride());
            int least = first;
            int greatest = first;
            for (int i = first; i < last; i++) {
                least = values[i] < values[least] ? i : least;
                greatest = values[i] > values[greatest] ? i : greatest;
            }
            points[2 * k] = figure(values[Math.min(least, greatest)], unit);
            points[2 * k + 1] = figure(values[Math.max(least, greatest)], unit);
        }
        return new Line(panel, name, unit.symbol(), points);
    }

    private static @Nullable Double figure(double si, TradeUnit unit) {
        return Double.isNaN(si) ? null : unit.fromSi(si);
    }
}
