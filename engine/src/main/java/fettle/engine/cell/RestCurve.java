package fettle.engine.cell;

import fettle.engine.units.InputException;
import fettle.engine.working.Citation;
import java.util.Arrays;
import java.util.Locale;

/**
 * Rest volts of one cell against its charge: monotone, so that volts ↔ charge is unique. Thread-safe.
 *
 * <p>Formula: piecewise cubic Hermite through the table with the slopes of Fritsch and Butland, which never overshoot.
 * Outside charge 0 … 1 the end slope continues.
 *
 * <p>Leaves out: hysteresis (LiFePO4, NiMH) and temperature; the band stands for the spread between cells.
 *
 * @see "F. N. Fritsch, J. Butland, A method for constructing local monotone piecewise cubic interpolants, SIAM J. Sci.
 *     Stat. Comput. 5 (1984) 300-304, eq. (5)"
 */
public final class RestCurve {
    private static final int MOST_BISECTIONS = 60;

    private final double[] charge;
    private final double[] volts;
    private final double[] slope;
    private final double[] bandVolts;
    private final double[][] cubic;
    private final Citation citation;

    private RestCurve(double[] charge, double[] volts, double[] bandVolts, Citation citation) {
        this.charge = charge;
        this.volts = volts;
        this.bandVolts = bandVolts;
        this.slope = monotoneSlopes(charge, volts);
        this.citation = citation;
        this.cubic = new double[charge.length - 1][];
        for (int row = 0; row < cubic.length; row++) {
            cubic[row] = cubic(row);
        }
    }

    /** The pieces between rows by powers of the charge above the lower row: first, second, third. */
    private double[] cubic(int row) {
        double width = charge[row + 1] - charge[row];
        double rise = (volts[row + 1] - volts[row]) / width;
        double second = (3 * rise - 2 * slope[row] - slope[row + 1]) / width;
        double third = (slope[row] + slope[row + 1] - 2 * rise) / (width * width);
        return new double[] {slope[row], second, third};
    }

    /**
     * A curve through a table.
     *
     * @param charge fraction of full, rising, first 0, last 1
     * @param volts rest volts [V], strictly rising
     * @param bandVolts one standard deviation between cells of the chemistry [V], ≥ 0
     * @param citation whose table it is
     * @throws InputException naming the first row that does not rise
     */
    public static RestCurve of(double[] charge, double[] volts, double[] bandVolts, Citation citation) {
        if (charge.length < 2 || volts.length != charge.length || bandVolts.length != charge.length) {
            throw new InputException(
                    "curve",
                    "the rest-voltage table has " + charge.length + " rows; expected at least 2, equally long.");
        }
        for (int row = 0; row < charge.length; row++) {
            boolean rises = row == 0 || (charge[row] > charge[row - 1] && volts[row] > volts[row - 1]);
            if (!rises || !Double.isFinite(volts[row]) || !(bandVolts[row] >= 0)) {
                throw new InputException(
                        "curve",
                        String.format(
                                Locale.ROOT,
                                "row %d of the rest-voltage table is charge %.4f, %.4f V; expected both to rise from row"
                                        + " to row. Sort the table and remove repeated rows.",
                                row + 1,
                                charge[row],
                                volts[row]));
            }
        }
        if (charge[0] != 0 || charge[charge.length - 1] != 1) {
            throw new InputException("curve", "the rest-voltage table must run from charge 0 to charge 1.");
        }
        return new RestCurve(charge.clone(), volts.clone(), bandVolts.clone(), citation);
    }

    /** Rest volts [V] at a charge fraction. */
    public double volts(double chargeFraction) {
        int last = charge.length - 1;
        if (chargeFraction <= 0) {
            return volts[0] + slope[0] * chargeFraction;
        }
        if (chargeFraction >= 1) {
            return volts[last] + slope[last] * (chargeFraction - 1);
        }
        int row = rowOf(charge, chargeFraction);
        double width = charge[row + 1] - charge[row];
        double t = (chargeFraction - charge[row]) / width;
        double rest = 1 - t;
        return volts[row] * rest * rest * (1 + 2 * t)
                + volts[row + 1] * t * t * (3 - 2 * t)
                + width * t * rest * (slope[row] * rest - slope[row + 1] * t);
    }

    /** Slope dV/dcharge [V per whole charge] at a charge fraction. */
    public double slopeVolts(double chargeFraction) {
        if (chargeFraction <= 0) {
            return slope[0];
        }
        if (chargeFraction >= 1) {
            return slope[charge.length - 1];
        }
        int row = rowOf(charge, chargeFraction);
        double width = charge[row + 1] - charge[row];
        double t = (chargeFraction - charge[row]) / width;
        double rise = (volts[row + 1] - volts[row]) / width;
        return 6 * rise * t * (1 - t) + slope[row] * (1 - t) * (1 - 3 * t) + slope[row + 1] * t * (3 * t - 2);
    }

    /**
     * Rest volts and their slope at many charges, which may be any but are looked up fastest where neighbours are alike.
     *
     * @param volts filled with rest volts [V]
     * @param slopeVolts filled with dV/dcharge [V per whole charge]
     */
    public void fill(double[] chargeFraction, double[] volts, double[] slopeVolts) {
        int at = 0;
        int last = charge.length - 1;
        double[] knots = this.volts;
        for (int i = 0; i < chargeFraction.length; i++) {
            double z = chargeFraction[i];
            if (!(z > 0 && z < 1)) {
                volts[i] = volts(z);
                slopeVolts[i] = slopeVolts(z);
                continue;
            }
            while (at > 0 && z < charge[at]) {
                at--;
            }
            while (at < last - 1 && z >= charge[at + 1]) {
                at++;
            }
            double x = z - charge[at];
            double[] c = cubic[at];
            volts[i] = knots[at] + x * (c[0] + x * (c[1] + x * c[2]));
            slopeVolts[i] = c[0] + x * (2 * c[1] + x * 3 * c[2]);
        }
    }

    /** Charge fraction at given rest volts, the inverse of {@link #volts}; outside the table it goes past 0 and 1. */
    public double charge(double restVolts) {
        int last = charge.length - 1;
        if (restVolts <= volts[0]) {
            return (restVolts - volts[0]) / slope[0];
        }
        if (restVolts >= volts[last]) {
            return 1 + (restVolts - volts[last]) / slope[last];
        }
        int row = rowOf(volts, restVolts);
        double low = charge[row];
        double high = charge[row + 1];
        for (int i = 0; i < MOST_BISECTIONS && high - low > Math.ulp(high); i++) {
            double middle = 0.5 * (low + high);
            if (volts(middle) < restVolts) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    /** One standard deviation between cells of the chemistry [V], straight between rows. */
    public double bandVolts(double chargeFraction) {
        double inside = Math.max(0, Math.min(1, chargeFraction));
        int row = rowOf(charge, inside);
        double t = (inside - charge[row]) / (charge[row + 1] - charge[row]);
        return bandVolts[row] + t * (bandVolts[row + 1] - bandVolts[row]);
    }

    public Citation citation() {
        return citation;
    }

    private static int rowOf(double[] rising, double value) {
        int found = Arrays.binarySearch(rising, value);
        int row = found >= 0 ? found : -found - 2;
        return Math.max(0, Math.min(rising.length - 2, row));
    }

    private static double[] monotoneSlopes(double[] x, double[] y) {
        int last = x.length - 1;
        double[] slopes = new double[x.length];
        slopes[0] = (y[1] - y[0]) / (x[1] - x[0]);
        slopes[last] = (y[last] - y[last - 1]) / (x[last] - x[last - 1]);
        for (int i = 1; i < last; i++) {
            double left = x[i] - x[i - 1];
            double right = x[i + 1] - x[i];
            double riseLeft = (y[i] - y[i - 1]) / left;
            double riseRight = (y[i + 1] - y[i]) / right;
            double weightLeft = 2 * right + left;
            double weightRight = right + 2 * left;
            slopes[i] = (weightLeft + weightRight) / (weightLeft / riseLeft + weightRight / riseRight);
        }
        return slopes;
    }
}
