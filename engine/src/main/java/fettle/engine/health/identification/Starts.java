package fettle.engine.health.identification;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The places a fit starts from.
 *
 * <p>A loose belief is also tried from a larger and a smaller capacity, and with quick pairs only: a slow pair and a wrong
 * capacity look alike.
 */
final class Starts {
    private static final double LADDER = 1.9;
    private static final int MOST_RUNGS = 64;
    private static final double LONGEST_SHARE = 0.7; // of the window
    private static final double SHORT_SHARE = 0.1;
    private static final double[] AWAY = {0, 1.5, -1}; // deviations of capacity from which to look
    private static final double[] BELIEVED = {0};
    private static final double TIGHT = 0.07; // a belief in capacity this good needs one look only

    private static final double ALIKE_CHARGE = 0.005;
    private static final double ALIKE_LOG_CAPACITY = 0.03;

    private final LoadWindow window;
    private final CellBelief belief;
    private final LoadColumns load;

    Starts(LoadWindow window, CellBelief belief, double delaySeconds, double[] weights) {
        this.window = window;
        this.belief = belief;
        this.load = new LoadColumns(window, belief, delaySeconds, weights, ladder(window));
    }

    /** Starts with so many pairs; none if volts rise with the current. */
    List<CircuitPoint> with(int pairs) {
        boolean loose = StartSearch.relative(belief.capacityCoulombs()) > TIGHT;
        List<CircuitPoint> starts = from(pairs, loose ? AWAY : BELIEVED);
        return starts.isEmpty() && !loose ? from(pairs, AWAY) : starts;
    }

    private List<CircuitPoint> from(int pairs, double[] away) {
        double logBelieved = Math.log(belief.capacityCoulombs().value());
        double deviation = StartSearch.relative(belief.capacityCoulombs());
        List<CircuitPoint> starts = new ArrayList<>();
        double[] shares = away.length > 1 ? new double[] {LONGEST_SHARE, SHORT_SHARE} : new double[] {LONGEST_SHARE};
        for (double share : shares) {
            int taus = rungsBelow(share * window.durationSeconds());
            for (double deviations : away) {
                StartSearch.Place from =
                        new StartSearch.Place(belief.startCharge().value(), logBelieved + deviations * deviation);
                StartSearch.best(load, belief, pairs, taus, from)
                        .filter(point -> starts.stream().noneMatch(other -> isAlike(point, other)))
                        .ifPresent(starts::add);
            }
        }
        return starts;
    }

    /** From two such places a fit ends in the same one. */
    private static boolean isAlike(CircuitPoint point, CircuitPoint other) {
        return Arrays.equals(point.logTau(), other.logTau())
                && Math.abs(point.startCharge() - other.startCharge()) < ALIKE_CHARGE
                && Math.abs(point.logCapacity() - other.logCapacity()) < ALIKE_LOG_CAPACITY;
    }

    private int rungsBelow(double seconds) {
        int count = 0;
        while (count < load.taus() && load.tau(count) < seconds) {
            count++;
        }
        return count;
    }

    private static double[] ladder(LoadWindow window) {
        double[] rungs = new double[MOST_RUNGS];
        int count = 0;
        for (double tau = 2 * window.stepSeconds();
                tau < LONGEST_SHARE * window.durationSeconds() && count < MOST_RUNGS;
                tau *= LADDER) {
            rungs[count++] = tau;
        }
        return Arrays.copyOf(rungs, count);
    }
}
