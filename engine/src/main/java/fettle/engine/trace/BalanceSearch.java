package fettle.engine.trace;

import java.util.ArrayList;
import java.util.List;

/**
 * Tells a rest during which cells were bled level from a plain rest. Needs cells logged one by one.
 *
 * <p>Bleeding draws the highest cell down while the lowest stays; relaxing after a load or a charge moves all cells the
 * same way. A rest counts as balance if it lasts two minutes, the highest cell falls by 3 mV or more and by three times
 * what the lowest moves. Figures: common practice, no source; checked against a solved bleed circuit.
 */
final class BalanceSearch {
    private static final double SHORTEST_SECONDS = 120;
    private static final double LEAST_FALL_VOLTS = 0.003;
    private static final double TIMES_LOWEST = 3;
    private static final double EDGE_SHARE = 0.1;

    private BalanceSearch() {}

    static List<Segment> mark(Trace trace, List<Segment> segments) {
        List<Segment> marked = new ArrayList<>();
        for (Segment segment : segments) {
            boolean balance = segment.kind() == SegmentKind.REST && trace.cells() > 1 && isBalance(trace, segment);
            marked.add(balance ? new Segment(SegmentKind.BALANCE, segment.from(), segment.to()) : segment);
        }
        return marked;
    }

    private static boolean isBalance(Trace trace, Segment segment) {
        if (segment.durationSeconds(trace) < SHORTEST_SECONDS) {
            return false;
        }
        int edge = Math.max(1, (int) (EDGE_SHARE * segment.size()));
        int highest = 0;
        int lowest = 0;
        double[] first = new double[trace.cells()];
        double[] fall = new double[trace.cells()];
        for (int cell = 0; cell < first.length; cell++) {
            double[] volts = trace.cellVolts()[cell];
            first[cell] = mean(volts, segment.from(), segment.from() + edge);
            fall[cell] = first[cell] - mean(volts, segment.to() - edge, segment.to());
            highest = first[cell] > first[highest] ? cell : highest;
            lowest = first[cell] < first[lowest] ? cell : lowest;
        }
        return fall[highest] >= LEAST_FALL_VOLTS && fall[highest] >= TIMES_LOWEST * Math.abs(fall[lowest]);
    }

    private static double mean(double[] values, int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += values[i];
        }
        return sum / (to - from);
    }
}
