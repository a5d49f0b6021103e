package fettle.engine.health.identification;

import org.jspecify.annotations.Nullable;

/**
 * What a resistor-capacitor pair of 1 Ω would drop under a current: the current, smoothed with the pair's time constant.
 *
 * <p>Formula: τ dx/dt = i − x, exact for a current that runs straight between samples; x = 0 before the first sample.
 */
final class Polarisation {
    /** Below this share of the time constant the exact weights are taken from their series: no cancellation. */
    private static final double SERIES_BELOW = 1e-4;

    /** Steps alike within this share, by rounding of the time stamps, are one: the weights change by as little. */
    private static final double SAME_STEP = 1e-7;

    private Polarisation() {}

    /** Smoothed current [A] at each sample. */
    static double[] of(LoadWindow window, double[] amps, double tauSeconds) {
        double[] smoothed = new double[amps.length];
        fill(window, amps, tauSeconds, smoothed, null);
        return smoothed;
    }

    /** Smoothed current [A], and where asked for its derivative by ln τ [A]. */
    static void fill(
            LoadWindow window, double[] amps, double tauSeconds, double[] smoothed, double @Nullable [] byLogTau) {
        double lastStep = -1;
        double stays = 0;
        double fromOld = 0;
        double fromNew = 0;
        double ratio = 0;
        double x = 0;
        double y = 0;
        for (int row = 1; row < amps.length; row++) {
            double step = window.seconds(row) - window.seconds(row - 1);
            if (Math.abs(step - lastStep) > SAME_STEP * step) {
                ratio = step / tauSeconds;
                stays = Math.exp(-ratio);
                double mean = ratio < SERIES_BELOW ? 1 - ratio / 2 : -Math.expm1(-ratio) / ratio;
                fromNew = 1 - mean;
                fromOld = mean - stays;
                lastStep = step;
            }
            double old = amps[row - 1];
            // legend: ds/dlnτ = r s, dm/dlnτ = m − s, with r = step/τ, s = exp(−r), m = (1 − s)/r
            y = stays * (y + ratio * x) + (fromOld - ratio * stays) * old - fromOld * amps[row];
            x = stays * x + fromOld * old + fromNew * amps[row];
            smoothed[row] = x;
            if (byLogTau != null) {
                byLogTau[row] = y;
            }
        }
    }
}
