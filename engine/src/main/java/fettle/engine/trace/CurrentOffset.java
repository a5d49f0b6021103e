package fettle.engine.trace;

import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import java.util.List;
import java.util.Optional;

/**
 * What the current sensor shows while the pack rests: a reading that should be zero, and what it does to the count.
 *
 * @param amps mean reading at rest [A], with its standard deviation over the rests
 * @param restSeconds time at rest it was taken over [s]
 * @param countCoulombs what that reading adds to the count of the whole trace [C], discharge positive
 */
public record CurrentOffset(Estimate amps, double restSeconds, double countCoulombs) {
    private static final double SHORTEST_REST_SECONDS = 30;

    /**
     * The offset over all rests of half a minute or more.
     *
     * <p>Leaves out: loads too small to be told from rest (a receiver left on), which look the same.
     *
     * @return empty if no current was logged or the pack never rested so long
     */
    public static Optional<CurrentOffset> of(Trace trace, List<Segment> segments) {
        if (!trace.hasCurrent()) {
            return Optional.empty();
        }
        double load = Segmentation.loadAmps(trace);
        double sum = 0;
        double squares = 0;
        int samples = 0;
        double seconds = 0;
        for (Segment segment : segments) {
            if (segment.kind().isLoaded() || segment.durationSeconds(trace) < SHORTEST_REST_SECONDS) {
                continue;
            }
            seconds += segment.durationSeconds(trace);
            for (int i = segment.from(); i < segment.to(); i++) {
                double amps = trace.currentAmps()[i];
                if (Math.abs(amps) <= load) {
                    sum += amps;
                    squares += amps * amps;
                    samples++;
                }
            }
        }
        return samples < 2 ? Optional.empty() : Optional.of(offset(trace, sum, squares, samples, seconds));
    }

    private static CurrentOffset offset(Trace trace, double sum, double squares, int samples, double seconds) {
        double mean = sum / samples;
        double deviation = Math.sqrt(Math.max(0, squares / samples - mean * mean));
        Estimate amps = Estimate.ofIndependent(mean, List.of(new Driver("scatter of the current at rest", deviation)));
        return new CurrentOffset(amps, seconds, mean * Counting.of(trace).countedSeconds());
    }
}
