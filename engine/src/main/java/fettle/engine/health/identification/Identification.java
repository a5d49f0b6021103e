package fettle.engine.health.identification;

import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hipparchus.linear.RealMatrix;

/** Finds a cell's equivalent circuit in a window of a log. Pure and thread-safe. */
public final class Identification {
    private static final double LEAST_SWING_AMPS = 0.02; // less than a meter of the trade resolves
    private static final double LEAST_SWING_SHARE_PER_HOUR =
            0.1; // of 1C: a tenth of C moves volts by about a meter's error
    private static final double TOLD = 0.5; // ± above this share of the value: the data cannot tell
    private static final double CLEARLY_BETTER = 6; // fall of the information criterion that favours two pairs
    private static final double WIDE_GAP = 4; // times that: spikes still in both fits cannot have made it
    private static final double LEAST_TIME_CONSTANTS = 2; // a window shorter than this shows no decay
    private static final double MOST_WEIGHT_STEPS = 3; // a row at rest counts for so many quick rows at most
    private static final double LEAST_DELAY_SHARE =
            0.2; // of a row: a smaller delay is taken as none, for it trades with R0
    private static final int LEAST_STEPS_FOR_DELAY = 2; // on a single edge delay, R0 and a quick pair look alike
    private static final int MOST_ROWS =
            20_000; // longer windows are averaged in blocks; a pair quicker than these is lost
    private static final double QUICK_SHARE = 0.1;

    private Identification() {}

    /**
     * The circuit that explains a window.
     *
     * @throws InputException if the current hardly changes, so that nothing can be told
     */
    public static IdentifiedCircuit of(LoadWindow window, CellBelief belief, PairCount count) {
        refuseSteady(window, belief);
        double guessed = SensorDelay.of(window);
        double step = window.stepSeconds(QUICK_SHARE);
        double delay = Math.abs(guessed) > LEAST_DELAY_SHARE * step ? guessed : 0;
        int block = (window.rows() + MOST_ROWS - 1) / MOST_ROWS;
        if (block > 1) {
            IdentifiedCircuit found = of(window.averaged(block, delay), belief, count, new Delay(0, false));
            return found.readFrom(window.rows(), new Estimate(delay, 0.5 * step, List.of()));
        }
        boolean enough = window.loadSteps() >= LEAST_STEPS_FOR_DELAY;
        return of(window, belief, count, enough ? new Delay(delay, delay != 0) : new Delay(0, false));
    }

    /** The delay to start from, and whether it is sought or kept. */
    private record Delay(double seconds, boolean free) {}

    private static IdentifiedCircuit of(LoadWindow window, CellBelief belief, PairCount count, Delay delay) {
        double[] weights = window.timeWeights(MOST_WEIGHT_STEPS * window.stepSeconds(QUICK_SHARE));
        Starts starts = new Starts(window, belief, delay.seconds(), weights);
        Function<Integer, Optional<CircuitFit>> scout = pairs -> starts.with(pairs).stream()
                .map(start -> new CircuitFit(window, belief, start, delay.free(), weights))
                .min(Comparator.comparingDouble(CircuitFit::misfit));
        Optional<CircuitFit> one = count == PairCount.TWO ? Optional.empty() : scout.apply(1);
        Optional<CircuitFit> two = count == PairCount.ONE ? Optional.empty() : scout.apply(2);
        CircuitFit chosen = one.isPresent() && two.isPresent()
                ? chosen(one.get().settled(), two.get().refined())
                : two.or(() -> one).orElseThrow(Identification::noResistance).refined();
        return told(chosen, window, delay.free());
    }

    /** Two pairs where they are worth it: told at once where the gap is wide, else when spikes are out of both. */
    private static CircuitFit chosen(CircuitFit one, CircuitFit two) {
        double readings = two.noise().effectiveSamples();
        double needed = CLEARLY_BETTER + 2 * Math.log(Math.max(Math.E, readings));
        if (readings * Math.log(one.misfit() / two.misfit()) > WIDE_GAP * needed) {
            return two;
        }
        CircuitFit refined = one.refined();
        return readings * Math.log(refined.variance() / two.variance()) > needed ? two : refined;
    }

    private static InputException noResistance() {
        return new InputException(
                "window",
                "volts do not fall with current in this window: no resistance fits. Check which sign of the "
                        + "current means discharge, and that volts and amps are of the same pack.");
    }

    private static void refuseSteady(LoadWindow window, CellBelief belief) {
        double sum = 0;
        double squares = 0;
        for (int row = 0; row < window.rows(); row++) {
            sum += window.amps(row);
            squares += window.amps(row) * window.amps(row);
        }
        double mean = sum / window.rows();
        double swing = Math.sqrt(Math.max(0, squares / window.rows() - mean * mean));
        double needed = Math.max(
                LEAST_SWING_AMPS,
                LEAST_SWING_SHARE_PER_HOUR
                        * TradeUnit.AMPERE_HOUR.fromSi(belief.capacityCoulombs().value()));
        if (swing < needed) {
            throw new InputException(
                    "window",
                    "current varies by " + TradeUnit.AMPERE.print(swing, 3) + " about its mean; expected at least "
                            + TradeUnit.AMPERE.print(needed, 2)
                            + " to tell resistance from rest volts. Take a stretch where the load changes.");
        }
    }

    private static IdentifiedCircuit told(CircuitFit fit, LoadWindow window, boolean delayFree) {
        CircuitPoint point = fit.point();
        RealMatrix covariance = fit.covariance();
        int pairs = point.pairs();
        List<IdentifiedPair> found = new ArrayList<>();
        List<String> doubts = new ArrayList<>();
        for (int pair = 0; pair < pairs; pair++) {
            double tau = Math.exp(point.logTau()[pair]);
            Estimate ohms = estimate(point.ohms()[pair + 1], covariance, pair + 1, 1);
            Estimate seconds = estimate(tau, covariance, pairs + 1 + pair, tau);
            doubt(ohms, seconds, window).ifPresent(doubts::add);
            found.add(new IdentifiedPair(ohms, seconds));
        }
        found.sort(Comparator.comparingDouble(pair -> pair.seconds().value()));
        double capacity = Math.exp(point.logCapacity());
        return new IdentifiedCircuit(
                estimate(point.ohms()[0], covariance, 0, 1),
                found,
                estimate(point.startCharge(), covariance, 2 * pairs + 1, 1),
                estimate(capacity, covariance, 2 * pairs + 2, capacity),
                delayFree
                        ? estimate(point.delaySeconds(), covariance, 2 * pairs + 3, 1)
                        : new Estimate(0, 0.5 * window.stepSeconds(), List.of()),
                window.kelvins(),
                fit.rmsVolts(),
                window.rows(),
                fit.noise().effectiveSamples(),
                fit.spikes(),
                doubts);
    }

    private static Optional<String> doubt(Estimate ohms, Estimate seconds, LoadWindow window) {
        double tau = seconds.value();
        if (tau * LEAST_TIME_CONSTANTS > window.durationSeconds()) {
            return Optional.of("the window of " + TradeUnit.SECOND.print(window.durationSeconds(), 0)
                    + " is too short for a pair of " + TradeUnit.SECOND.print(tau, 0)
                    + ": its resistance and time constant trade off");
        }
        if (ohms.standardDeviation() > TOLD * ohms.value() || seconds.standardDeviation() > TOLD * tau) {
            return Optional.of("the load hardly excites the pair of " + TradeUnit.SECOND.print(seconds, 1)
                    + ": its resistance is " + TradeUnit.MILLIOHM.print(ohms, 1));
        }
        return Optional.empty();
    }

    private static Estimate estimate(double value, RealMatrix covariance, int at, double factor) {
        double deviation = Math.sqrt(Math.max(0, covariance.getEntry(at, at))) * factor;
        return new Estimate(value, deviation, List.of(new Driver("what the circuit leaves unexplained", deviation)));
    }
}
