package fettle.book.intake;

import java.util.Locale;

/**
 * Tells which sign of a log's current means discharge from what the volts do.
 *
 * <p>A pack's volts fall when the current drawn from it rises, whether it is being charged or discharged. So the
 * correlation of the steps of current with the steps of volts has the sign of −(discharge positive). Where the current
 * hardly steps, volts that fall while a steady current flows tell the same. The log is said to be clear at a
 * correlation of 0.3 or more (0.9 with two steps alone), or a fall or rise of 1 % over the steady current: common practice, no source; checked on
 * every measured record with a current column.
 */
final class SignFinder {
    private static final double CLEAR_CORRELATION = 0.3;
    private static final double CLEAR_CORRELATION_OF_TWO = 0.9;
    private static final double CLEAR_SHARE = 0.01;
    private static final double LEAST_STEP_SHARE = 0.1;
    private static final int FEWEST_STEPS = 3;

    /** What was found, and from what. */
    record Finding(PositiveCurrent positive, String why) {}

    private SignFinder() {}

    /** @param volts pack volts and {@code amps} the current as logged, sample by sample, both finite */
    static Finding find(double[] volts, double[] amps) {
        Finding bySteps = bySteps(volts, amps);
        return bySteps.positive() == PositiveCurrent.UNCLEAR ? byTrend(volts, amps) : bySteps;
    }

    private static Finding bySteps(double[] volts, double[] amps) {
        double largest = 0;
        for (int i = 1; i < amps.length; i++) {
            largest = Math.max(largest, Math.abs(amps[i] - amps[i - 1]));
        }
        double product = 0;
        double ampsSquared = 0;
        double voltsSquared = 0;
        int steps = 0;
        for (int i = 1; i < amps.length; i++) {
            double ampStep = amps[i] - amps[i - 1];
            double voltStep = volts[i] - volts[i - 1];
            if (Math.abs(ampStep) >= LEAST_STEP_SHARE * largest && largest > 0) {
                product += ampStep * voltStep;
                ampsSquared += ampStep * ampStep;
                voltsSquared += voltStep * voltStep;
                steps++;
            }
        }
        double correlation = product / Math.sqrt(ampsSquared * voltsSquared);
        double clear = steps < FEWEST_STEPS ? CLEAR_CORRELATION_OF_TWO : CLEAR_CORRELATION;
        if (steps < 2 || !(Math.abs(correlation) >= clear)) {
            return new Finding(PositiveCurrent.UNCLEAR, "");
        }
        return new Finding(
                correlation < 0 ? PositiveCurrent.DISCHARGES : PositiveCurrent.CHARGES,
                String.format(
                        Locale.ROOT,
                        "when the current steps up, the volts step %s (%d steps, correlation %.2f)",
                        correlation < 0 ? "down" : "up",
                        steps,
                        correlation));
    }

    /** From the longest stretch of one sign. */
    private static Finding byTrend(double[] volts, double[] amps) {
        int bestFrom = 0;
        int bestTo = 0;
        int from = 0;
        for (int i = 1; i <= amps.length; i++) {
            if (i == amps.length || Math.signum(amps[i]) != Math.signum(amps[from])) {
                if (amps[from] != 0 && i - from > bestTo - bestFrom) {
                    bestFrom = from;
                    bestTo = i;
                }
                from = i;
            }
        }
        if (bestTo - bestFrom < FEWEST_STEPS) {
            return new Finding(PositiveCurrent.UNCLEAR, "too little current flows to tell");
        }
        double first = volts[bestFrom];
        double change = (volts[bestTo - 1] - first) / first;
        if (Math.abs(change) < CLEAR_SHARE) {
            return new Finding(PositiveCurrent.UNCLEAR, "the volts hardly move while current flows");
        }
        boolean discharges = change < 0 == amps[bestFrom] > 0;
        return new Finding(
                discharges ? PositiveCurrent.DISCHARGES : PositiveCurrent.CHARGES,
                String.format(
                        Locale.ROOT,
                        "the volts %s by %.1f %% while a %s current flows",
                        change < 0 ? "fall" : "rise",
                        100 * Math.abs(change),
                        amps[bestFrom] > 0 ? "positive" : "negative"));
    }
}
