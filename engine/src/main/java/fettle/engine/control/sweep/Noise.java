package fettle.engine.control.sweep;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Scatter of the readings about a line through their neighbours.
 *
 * <p>Formula: e = y − interpolation between both neighbours, σ = median |e| / 0.6745 / √(1 + w² + (1 − w)²); the median
 * bears spikes, and a straight rise leaves no trace in it.
 */
final class Noise {
    /** Half the scatter of a normal distribution lies within this many standard deviations. */
    private static final double HALF_WITHIN = 0.6745;

    /** Least scatter believed [A]: the last digit of a usual meter. */
    private static final double LEAST = 0.001;

    private Noise() {}

    /** One standard deviation of a reading [A]. */
    static double amps(List<Samples> passes) {
        double[] scatter = passes.stream()
                .flatMapToDouble(pass -> IntStream.range(1, pass.size() - 1)
                        .filter(at -> pass.pulses()[at + 1] > pass.pulses()[at - 1])
                        .mapToDouble(at -> off(pass, at)))
                .toArray();
        return scatter.length == 0 ? LEAST : Math.max(LEAST, Samples.median(scatter) / HALF_WITHIN);
    }

    private static double off(Samples pass, int at) {
        double[] x = pass.pulses();
        double part = (x[at] - x[at - 1]) / (x[at + 1] - x[at - 1]);
        double line = pass.amps()[at - 1] * (1 - part) + pass.amps()[at + 1] * part;
        return Math.abs(pass.amps()[at] - line) / Math.sqrt(1 + part * part + (1 - part) * (1 - part));
    }
}
