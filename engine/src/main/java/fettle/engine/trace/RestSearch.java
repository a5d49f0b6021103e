package fettle.engine.trace;

import java.util.ArrayList;
import java.util.List;

/** Reads the rests of a trace that are long enough to say something of charge. */
final class RestSearch {
    /** A minute after a load most of the sag is gone; what is left is in the reading's ±. Common practice, no source. */
    private static final double LEAST_SECONDS = 60;

    private static final double AVERAGED_SECONDS = 10;

    private RestSearch() {}

    static List<TraceRest> of(Trace trace, List<Segment> segments, int cellsInSeries) {
        List<TraceRest> rests = new ArrayList<>();
        for (Segment segment : segments) {
            if (segment.kind() == SegmentKind.REST
                    && segment.durationSeconds(trace) >= LEAST_SECONDS
                    && trace.hasVolts()) {
                read(trace, segment, cellsInSeries, rests);
            }
        }
        return rests;
    }

    private static void read(Trace trace, Segment rest, int cellsInSeries, List<TraceRest> rests) {
        double end = trace.timeSeconds()[rest.to() - 1];
        int from = rest.to() - 1;
        while (from > rest.from() && trace.timeSeconds()[from - 1] >= end - AVERAGED_SECONDS) {
            from--;
        }
        double rested = rest.durationSeconds(trace);
        double warmth = trace.hasTemperature() ? mean(trace.temperatureKelvins(), from, rest.to()) : Double.NaN;
        Double kelvins = Double.isNaN(warmth) ? null : warmth;
        if (trace.cells() == 0) {
            double volts = mean(trace.packVolts(), from, rest.to()) / cellsInSeries;
            rests.add(new TraceRest(0, end, rested, volts, kelvins));
        }
        for (int cell = 1; cell <= trace.cells(); cell++) {
            double volts = mean(trace.cellVolts()[cell - 1], from, rest.to());
            if (!Double.isNaN(volts)) {
                rests.add(new TraceRest(cell, end, rested, volts, kelvins));
            }
        }
    }

    /** Of what was logged; {@code NaN} if nothing was. */
    private static double mean(double[] values, int from, int to) {
        double sum = 0;
        int count = 0;
        for (int i = from; i < to; i++) {
            if (!Double.isNaN(values[i])) {
                sum += values[i];
                count++;
            }
        }
        return sum / count;
    }
}
