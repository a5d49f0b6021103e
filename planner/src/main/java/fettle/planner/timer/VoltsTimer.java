package fettle.planner.timer;

import fettle.engine.trace.Trace;
import fettle.engine.units.Faults;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * A timer for a craft whose logs have volts but no current: from how long earlier runs stayed above the under-load minimum.
 *
 * <p>It knows nothing of charge, so the reserve is not looked at, and nothing of the pack that is to run: it holds for packs
 * as good as those logged.
 *
 * @param settingSeconds the setting [s], whole seconds, rounded down
 * @param times how long each run stayed above the minimum [s], from its first sample, in the order given
 * @param reached how many of them came down to it; the others count with their whole length, which is too short and so on
 *     the safe side
 */
public record VoltsTimer(int settingSeconds, List<Double> times, int reached) {
    /** Volts are looked at as the mean of half a second, so that one sample of a motor starting does not count. */
    private static final double WINDOW_SECONDS = 0.5;

    public VoltsTimer {
        times = List.copyOf(times);
    }

    /**
     * Works out the setting.
     *
     * @param flights earlier runs, with volts
     * @param minimumVolts under-load minimum of the whole pack [V]
     * @param risk share of runs that may come to the minimum before the timer, 0.001 … 0.5
     */
    public static VoltsTimer of(List<Trace> flights, double minimumVolts, double risk) {
        new Faults()
                .range("risk", "risk", risk, TradeUnit.PERCENT, 0.1, 50, "Usual is 5 %.")
                .refuse();
        if (flights.isEmpty() || flights.stream().anyMatch(flight -> !flight.hasVolts())) {
            throw new InputException("runs", "a run without volts tells nothing here. Give logs with pack volts.");
        }
        List<Double> times = new ArrayList<>();
        int reached = 0;
        for (Trace flight : flights) {
            double time = secondsAbove(flight, minimumVolts);
            times.add(time);
            reached += time < flight.durationSeconds() ? 1 : 0;
        }
        return new VoltsTimer((int) Math.floor(LogSpread.of(times).quantile(risk)), times, reached);
    }

    /** Time from the first sample until the smoothed volts are below a minimum [s]; the whole length if they never are. */
    static double secondsAbove(Trace flight, double minimumVolts) {
        double[] time = flight.timeSeconds();
        int from = 0;
        int to = 0;
        double sum = 0;
        for (int middle = 0; middle < time.length; middle++) {
            while (to < time.length && time[to] <= time[middle] + WINDOW_SECONDS / 2) {
                sum += flight.packVolts()[to++];
            }
            while (time[from] < time[middle] - WINDOW_SECONDS / 2) {
                sum -= flight.packVolts()[from++];
            }
            if (sum / (to - from) < minimumVolts) {
                return time[middle] - time[0];
            }
        }
        return flight.durationSeconds();
    }
}
