package fettle.engine.health.identification;

import fettle.engine.cell.RestCurve;

/**
 * Volts of a cell under a logged current, and how they change with each parameter.
 *
 * <p>Formula: V = ocv(z₀ − q/Q) − i·R0 − Σ Rk·xk, q the charge counted by trapezoid, xk the current smoothed with τk, all with
 * the current delayed by the sensor delay.
 */
final class CircuitModel {
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

    /**
     * Volts and their derivatives at one point.
     *
     * @param volts terminal volts at each row [V]
     * @param columns derivatives of the volts, one array per parameter in the order of {@link CircuitPoint#plus}
     */
    record Look(double[] volts, double[][] columns) {}

    /** Volts and derivatives together, for they share most of the work. */
    Look look(CircuitPoint point, boolean delayFree) {
        int rows = window.rows();
        int pairs = point.pairs();
        double[][] columns = new double[point.size(delayFree)][rows];
        double[] amps = window.ampsDelayed(point.delaySeconds());
        fillOhms(columns, amps, point);
        double capacity = Math.exp(point.logCapacity());
        double[] counted = counted(amps);
        double[] volts = new double[rows];
        double[] slope = columns[2 * pairs + 1];
        curve.fill(charges(point, counted), volts, slope);
        double[] byCapacity = columns[2 * pairs + 2];
        for (int row = 0; row < rows; row++) {
            byCapacity[row] = slope[row] * counted[row] / capacity;
        }
        for (int which = 0; which <= pairs; which++) {
            double ohms = point.ohms()[which];
            for (int row = 0; row < rows; row++) {
                volts[row] += ohms * columns[which][row];
            }
        }
        if (delayFree) {
            double[] later = volts(point.withDelay(point.delaySeconds() + delayStep));
            double[] sooner = volts(point.withDelay(point.delaySeconds() - delayStep));
            for (int row = 0; row < rows; row++) {
                columns[2 * pairs + 3][row] = (later[row] - sooner[row]) / (2 * delayStep);
            }
        }
        return new Look(volts, columns);
    }

    private void fillOhms(double[][] columns, double[] amps, CircuitPoint point) {
        for (int row = 0; row < amps.length; row++) {
            columns[0][row] = -amps[row];
        }
        for (int pair = 0; pair < point.pairs(); pair++) {
            double[] byOhms = columns[1 + pair];
            double[] byTau = columns[1 + point.pairs() + pair];
            Polarisation.fill(window, amps, Math.exp(point.logTau()[pair]), byOhms, byTau);
            double ohms = point.ohms()[pair + 1];
            for (int row = 0; row < amps.length; row++) {
                byOhms[row] = -byOhms[row];
                byTau[row] = -ohms * byTau[row];
            }
        }
    }

    private double[] restVolts(CircuitPoint point, double[] amps) {
        double[] volts = new double[amps.length];
        curve.fill(charges(point, counted(amps)), volts, new double[amps.length]);
        return volts;
    }

    private static double[] charges(CircuitPoint point, double[] counted) {
        double capacity = Math.exp(point.logCapacity());
        double[] charges = new double[counted.length];
        for (int row = 0; row < counted.length; row++) {
            charges[row] = point.startCharge() - counted[row] / capacity;
        }
        return charges;
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
