package fettle.engine.cell.circuit;

import fettle.engine.cell.RestCurve;
import fettle.engine.units.InputException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Rest volts of a cell against its charge as the simulation uses them: straight between the rows of a table.
 *
 * <p>Outside the table the end slope continues. Straight pieces make the mean over a step exact and cheap. Immutable and
 * thread-safe.
 */
public final class OpenCircuit {
    /** A smooth curve is met exactly at every per cent of charge; a piece that misses it by more than this is halved. */
    private static final int FEWEST_PIECES = 100;

    /** Parts of a piece at whose ends it is compared with the curve. */
    private static final int QUARTERS = 4;

    private static final double SMOOTH_VOLTS = 2e-5;
    private static final double NARROWEST_PIECE = 1e-4;

    private final double[] charge;
    private final double[] volts;
    private final double[] slope;

    private OpenCircuit(double[] charge, double[] volts) {
        this.charge = charge;
        this.volts = volts;
        this.slope = new double[charge.length - 1];
        for (int piece = 0; piece < slope.length; piece++) {
            slope[piece] = (volts[piece + 1] - volts[piece]) / (charge[piece + 1] - charge[piece]);
        }
    }

    /**
     * A curve through a table.
     *
     * @param charge charge fraction, rising, at least two rows
     * @param volts rest volts [V], rising
     * @throws InputException naming the first row that does not rise
     */
    public static OpenCircuit of(double[] charge, double[] volts) {
        if (charge.length < 2 || charge.length != volts.length) {
            throw new InputException(
                    "curve",
                    "the rest-voltage table has " + charge.length + " charges and " + volts.length
                            + " volts; expected at least 2 rows, one value of each per row.");
        }
        for (int row = 0; row < charge.length; row++) {
            boolean rises = row == 0 || (charge[row] > charge[row - 1] && volts[row] > volts[row - 1]);
            if (!rises || !Double.isFinite(charge[row]) || !Double.isFinite(volts[row])) {
                throw new InputException(
                        "curve",
                        String.format(
                                Locale.ROOT,
                                "row %d of the rest-voltage table is charge %.4f, %.4f V; expected both to rise from"
                                        + " row to row. Sort the table and remove repeated rows.",
                                row + 1,
                                charge[row],
                                volts[row]));
            }
        }
        return new OpenCircuit(charge.clone(), volts.clone());
    }

    /** A smooth rest-voltage curve, cut into straight pieces that miss it by less than 0.1 mV. */
    public static OpenCircuit of(RestCurve curve) {
        List<Double> rows = new ArrayList<>();
        for (int piece = 0; piece < FEWEST_PIECES; piece++) {
            cut(curve, piece / (double) FEWEST_PIECES, (piece + 1) / (double) FEWEST_PIECES, rows);
        }
        rows.add(1.0);
        double[] charge = rows.stream().mapToDouble(Double::doubleValue).toArray();
        return of(charge, Arrays.stream(charge).map(curve::volts).toArray());
    }

    /** Adds where the pieces between two charges begin. */
    private static void cut(RestCurve curve, double from, double to, List<Double> rows) {
        double low = curve.volts(from);
        double rise = curve.volts(to) - low;
        double missed = 0;
        for (int quarter = 1; quarter < QUARTERS; quarter++) {
            double share = quarter / (double) QUARTERS;
            missed = Math.max(missed, Math.abs(curve.volts(from + share * (to - from)) - low - share * rise));
        }
        if (missed <= SMOOTH_VOLTS || to - from <= NARROWEST_PIECE) {
            rows.add(from);
        } else {
            double middle = 0.5 * (from + to);
            cut(curve, from, middle, rows);
            cut(curve, middle, to, rows);
        }
    }

    /** The same curve, all of it higher [V]; lower where negative. */
    public OpenCircuit raised(double byVolts) {
        return new OpenCircuit(
                charge, Arrays.stream(volts).map(v -> v + byVolts).toArray());
    }

    /** Rest volts [V] at a charge fraction. */
    public double volts(double chargeFraction) {
        return volts(piece(chargeFraction), chargeFraction);
    }

    /** Charge fraction at given rest volts [V]: the inverse of {@link #volts(double)}. */
    public double charge(double restVolts) {
        int piece = pieceOf(volts, restVolts);
        return charge[piece] + (restVolts - volts[piece]) / slope[piece];
    }

    /** Mean rest volts [V] on the way from one charge to another. */
    public double meanVolts(double from, double to) {
        if (from == to) {
            return volts(from);
        }
        double low = Math.min(from, to);
        double high = Math.max(from, to);
        int last = piece(high);
        double area = 0;
        double at = low;
        for (int piece = piece(low); piece <= last; piece++) {
            double end = piece == last ? high : charge[piece + 1];
            area += (end - at) * 0.5 * (volts(piece, at) + volts(piece, end));
            at = end;
        }
        return area / (high - low);
    }

    /** The straight piece a charge lies on. */
    public int piece(double chargeFraction) {
        return pieceOf(charge, chargeFraction);
    }

    /** Rest volts [V] on the straight line of a piece. */
    public double volts(int piece, double chargeFraction) {
        return volts[piece] + slope[piece] * (chargeFraction - charge[piece]);
    }

    /** Slope of a piece [V per whole charge]. */
    public double slopeVolts(int piece) {
        return slope[piece];
    }

    /** Least charge on a piece; −∞ for the first. */
    public double pieceFrom(int piece) {
        return piece == 0 ? Double.NEGATIVE_INFINITY : charge[piece];
    }

    /** Largest charge on a piece; +∞ for the last. */
    public double pieceTo(int piece) {
        return piece == slope.length - 1 ? Double.POSITIVE_INFINITY : charge[piece + 1];
    }

    private int pieceOf(double[] rising, double value) {
        int found = Arrays.binarySearch(rising, value);
        int row = found >= 0 ? found : -found - 2;
        return Math.max(0, Math.min(slope.length - 1, row));
    }
}
