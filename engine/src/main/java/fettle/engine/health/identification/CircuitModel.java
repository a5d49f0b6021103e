package fettle.engine.health.identification;

import fettle.engine.cell.RestCurve;

/**
 * Volts of a cell under a logged current, and how they change with each parameter.
 *
 * <p>Formula: V = ocv(z₀ − q/Q) − i·R0 − Σ Rk·xk, q the charge counted by trapezoid, xk the current smoothed with τk, all with
 * the current delayed by the sensor delay.
 */
final class CircuitModel {
    private static final double LOG_TAU_STEP = 1e-3; // for a central difference: error about 1e-7 of the column

    private final LoadWindow window;
    private final RestCurve curve;
    private final double delayStep;

    CircuitModel(LoadWindow window, RestCurve curve) {
        this.window = window;
        this.curve = curve;
        this.delayStep = 0.25 * window.stepSeconds();
    }

    /** Terminal volts [V] at each row. */
    double[] volts(CircuitPoint point) {
        double[] amps = window.ampsDelayed(point.delaySeconds());
        double[] volts = restVolts(point, amps);
        for (int row = 0; row < volts.length; row++) {
            volts[row] -= point.ohms()[0] * amps[row];
        }
        for (int pair = 0; pair < point.pairs(); pair++) {
            double[] smoothed = Polarisation.of(window, amps, Math.exp(point.logTau()[pair]));
            for (int row = 0; row < volts.length; row++) {
                volts[row] -= point.ohms()[pair + 1] * smoothed[row];
            }
        }
        return volts;
    }

    /** Derivatives of the volts, one array per parameter in the order of {@link CircuitPoint#plus}. */
    double[][] columns(CircuitPoint point, boolean delayFree) {
        int rows = window.rows();
        int pairs = point.pairs();
        double[][] columns = new double[point.size(delayFree)][rows];
        double[] amps = window.ampsDelayed(point.delaySeconds());
        fillOhms(columns, amps, point);
        double capacity = Math.exp(point.logCapacity());
        double[] counted = counted(amps);
        for (int row = 0; row < rows; row++) {
            double slope = curve.slopeVolts(point.startCharge() - counted[row] / capacity);
            columns[2 * pairs + 1][row] = slope;
            columns[2 * pairs + 2][row] = slope * counted[row] / capacity;
        }
        if (delayFree) {
            double[] later = volts(point.withDelay(point.delaySeconds() + delayStep));
            double[] sooner = volts(point.withDelay(point.delaySeconds() - delayStep));
            for (int row = 0; row < rows; row++) {
                columns[2 * pairs + 3][row] = (later[row] - sooner[row]) / (2 * delayStep);
            }
        }
        return columns;
    }

    private void fillOhms(double[][] columns, double[] amps, CircuitPoint point) {
        for (int row = 0; row < amps.length; row++) {
            columns[0][row] = -amps[row];
        }
        for (int pair = 0; pair < point.pairs(); pair++) {
            double logTau = point.logTau()[pair];
            double[] at = Polarisation.of(window, amps, Math.exp(logTau));
            double[] above = Polarisation.of(window, amps, Math.exp(logTau + LOG_TAU_STEP));
            double[] below = Polarisation.of(window, amps, Math.exp(logTau - LOG_TAU_STEP));
            double scale = point.ohms()[pair + 1] / (2 * LOG_TAU_STEP);
            double[] byTau = columns[1 + point.pairs() + pair];
            for (int row = 0; row < amps.length; row++) {
                columns[1 + pair][row] = -at[row];
                byTau[row] = -scale * (above[row] - below[row]);
            }
        }
    }

    private double[] restVolts(CircuitPoint point, double[] amps) {
        double capacity = Math.exp(point.logCapacity());
        double[] counted = counted(amps);
        for (int row = 0; row < counted.length; row++) {
            counted[row] = curve.volts(point.startCharge() - counted[row] / capacity);
        }
        return counted;
    }

    /** Charge taken out since the first row [C], by trapezoid. */
    double[] counted(double[] amps) {
        double[] counted = new double[amps.length];
        for (int row = 1; row < amps.length; row++) {
            double step = window.seconds(row) - window.seconds(row - 1);
            counted[row] = counted[row - 1] + 0.5 * (amps[row] + amps[row - 1]) * step;
        }
        return counted;
    }
}
