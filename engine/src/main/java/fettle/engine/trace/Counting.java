package fettle.engine.trace;

import fettle.engine.units.InputException;
import java.util.ArrayList;
import java.util.List;

/**
 * Counts charge and energy with the real time stamps.
 *
 * <p>Formula: Q = Σ ½ (i_k + i_k+1) (t_k+1 − t_k), E = Σ ½ (v_k i_k + v_k+1 i_k+1) (t_k+1 − t_k), what flows out and
 * what flows in apart; a step in which the current changes sign is parted where the straight line crosses zero. Nothing
 * is counted across a gap. Accuracy: against testers' counters and tables in {@code CountingAgainstOpenDataTest}.
 */
public final class Counting {
    private Counting() {}

    /**
     * Counts a whole trace.
     *
     * @throws InputException if no current was logged
     */
    public static Count of(Trace trace) {
        return of(trace, 0, trace.size() - 1);
    }

    /**
     * Counts from one sample to another, both included.
     *
     * @throws InputException if no current was logged
     */
    public static Count of(Trace trace, int first, int last) {
        return of(trace, first, last, Gaps.limitSeconds(trace));
    }

    private static Count of(Trace trace, int first, int last, double gapSeconds) {
        if (!trace.hasCurrent()) {
            throw new InputException(
                    "currentAmps", "no current was logged, so charge cannot be counted. Log current, or note the mAh.");
        }
        Tally tally = new Tally();
        for (int i = first; i < last; i++) {
            double seconds = trace.timeSeconds()[i + 1] - trace.timeSeconds()[i];
            if (seconds > gapSeconds) {
                tally.unseenSeconds += seconds;
            } else {
                tally.step(trace, i, seconds);
            }
        }
        return tally.count();
    }

    /**
     * Counts every segment. The step between a rest and a load belongs to the load, one between two loads to the first;
     * the counts of all segments add up to that of the whole trace.
     */
    public static List<Count> ofSegments(Trace trace, List<Segment> segments) {
        List<Count> counts = new ArrayList<>();
        double gapSeconds = Gaps.limitSeconds(trace); // looks through the whole trace: once, not for each segment
        for (int i = 0; i < segments.size(); i++) {
            Segment segment = segments.get(i);
            boolean loaded = segment.kind().isLoaded();
            boolean nextLoaded =
                    i + 1 < segments.size() && segments.get(i + 1).kind().isLoaded();
            boolean afterRest = i > 0 && !segments.get(i - 1).kind().isLoaded();
            int first = loaded && afterRest ? segment.from() - 1 : segment.from();
            int last = !loaded && nextLoaded ? segment.to() - 1 : Math.min(segment.to(), trace.size() - 1);
            counts.add(of(trace, first, last, gapSeconds));
        }
        return counts;
    }

    private static final class Tally {
        private double outCoulombs;
        private double inCoulombs;
        private double outJoules;
        private double inJoules;
        private double countedSeconds;
        private double unseenSeconds;

        void step(Trace trace, int i, double seconds) {
            double before = trace.currentAmps()[i];
            double after = trace.currentAmps()[i + 1];
            double voltsBefore = trace.hasVolts() ? trace.packVolts()[i] : 0;
            double voltsAfter = trace.hasVolts() ? trace.packVolts()[i + 1] : 0;
            countedSeconds += seconds;
            if (before * after >= 0) {
                add(0.5 * (before + after) * seconds, 0.5 * (before * voltsBefore + after * voltsAfter) * seconds);
            } else {
                double untilZero = seconds * before / (before - after);
                add(0.5 * before * untilZero, 0.5 * before * voltsBefore * untilZero);
                add(0.5 * after * (seconds - untilZero), 0.5 * after * voltsAfter * (seconds - untilZero));
            }
        }

        private void add(double coulombs, double joules) {
            if (coulombs >= 0) {
                outCoulombs += coulombs;
                outJoules += joules;
            } else {
                inCoulombs -= coulombs;
                inJoules -= joules;
            }
        }

        Count count() {
            return new Count(outCoulombs, inCoulombs, outJoules, inJoules, countedSeconds, unseenSeconds);
        }
    }
}
