package fettle.engine.health.identification;

/**
 * What a resistor-capacitor pair of 1 Ω would drop under a current: the current, smoothed with the pair's time constant.
 *
 * <p>Formula: τ dx/dt = i − x, exact for a current that runs straight between samples; x = 0 before the first sample.
 */
final class Polarisation {
    /** Below this share of the time constant the exact weights are taken from their series: no cancellation. */
    private static final double SERIES_BELOW = 1e-4;

    private Polarisation() {}

    /** Smoothed current [A] at each sample. */
    static double[] of(LoadWindow window, double[] amps, double tauSeconds) {
        double[] smoothed = new double[amps.length];
        double lastStep = -1;
        double stays = 0;
        double fromOld = 0;
        double fromNew = 0;
        for (int row = 1; row < amps.length; row++) {
            double step = window.seconds(row) - window.seconds(row - 1);
            if (Double.compare(step, lastStep) != 0) {
                double ratio = step / tauSeconds;
                stays = Math.exp(-ratio);
                double mean = ratio < SERIES_BELOW ? 1 - ratio / 2 : -Math.expm1(-ratio) / ratio;
                fromNew = 1 - mean;
                fromOld = mean - stays;
                lastStep = step;
            }
            smoothed[row] = stays * smoothed[row - 1] + fromOld * amps[row - 1] + fromNew * amps[row];
        }
        return smoothed;
    }
}
