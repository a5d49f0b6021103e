package fettle.engine.cell.circuit;

import fettle.engine.units.Faults;
import java.util.Arrays;

/**
 * The three resistances of a cell at 25 °C against its charge: straight between rows, constant outside. Immutable.
 *
 * <p>Rows are shared, so that one look-up serves all three.
 */
public final class Resistances {
    private final double[] charge;
    private final double[][] ohms;

    private Resistances(double[] charge, double[][] ohms) {
        this.charge = charge;
        this.ohms = ohms;
    }

    /** Resistances that do not depend on charge [Ω]. */
    public static Resistances constant(double r0Ohms, double r1Ohms, double r2Ohms) {
        return of(new double[] {0}, new double[] {r0Ohms}, new double[] {r1Ohms}, new double[] {r2Ohms});
    }

    /**
     * Resistances against charge.
     *
     * @param charge charge fraction, rising, at least one row
     * @param r0Ohms series resistance [Ω], ≥ 0
     * @param r1Ohms resistance of the first pair [Ω], ≥ 0
     * @param r2Ohms resistance of the second pair [Ω], ≥ 0
     */
    public static Resistances of(double[] charge, double[] r0Ohms, double[] r1Ohms, double[] r2Ohms) {
        double[][] ohms = {r0Ohms.clone(), r1Ohms.clone(), r2Ohms.clone()};
        Faults faults = new Faults();
        if (charge.length == 0) {
            faults.add("resistance", "the resistance table is empty; expected at least 1 row.");
        }
        for (int row = 1; row < charge.length; row++) {
            if (!(charge[row] > charge[row - 1])) {
                faults.add(
                        "resistance",
                        "row " + (row + 1) + " of the resistance table is charge " + charge[row]
                                + "; expected charge to rise from row to row. Sort the table.");
            }
        }
        for (int which = 0; which < ohms.length; which++) {
            refuseNegative("R" + which, ohms[which], charge.length, faults);
        }
        faults.refuse();
        return new Resistances(charge.clone(), ohms);
    }

    private static void refuseNegative(String name, double[] ohms, int rows, Faults faults) {
        if (ohms.length != rows) {
            faults.add(
                    "resistance",
                    name + " has " + ohms.length + " values for " + rows + " rows of charge; expected as many.");
        }
        for (double value : ohms) {
            if (!(value >= 0) || !Double.isFinite(value)) {
                faults.add(
                        "resistance", name + " is " + value + " Ω; expected 0 Ω or more. Check the sign and the unit.");
                return;
            }
        }
    }

    /** All three times a factor: an aged cell. */
    public Resistances times(double factor) {
        return of(charge, scaled(0, factor), scaled(1, factor), scaled(2, factor));
    }

    private double[] scaled(int which, double factor) {
        return Arrays.stream(ohms[which]).map(value -> value * factor).toArray();
    }

    /** The straight piece a charge lies on; pieces below and above the table are flat. */
    public int piece(double chargeFraction) {
        int found = Arrays.binarySearch(charge, chargeFraction);
        return found >= 0 ? found + 1 : -found - 1;
    }

    /** Least charge on a piece; −∞ for the first. */
    public double pieceFrom(int piece) {
        return piece == 0 ? Double.NEGATIVE_INFINITY : charge[piece - 1];
    }

    /** Largest charge on a piece; +∞ for the last. */
    public double pieceTo(int piece) {
        return piece == charge.length ? Double.POSITIVE_INFINITY : charge[piece];
    }

    /** Resistance [Ω] where the line of a piece crosses charge 0; which is 0, 1 or 2. */
    public double interceptOhms(int which, int piece) {
        int row = Math.min(Math.max(piece, 1), charge.length) - 1;
        return ohms[which][row] - slopeOhms(which, piece) * charge[row];
    }

    /** Slope of a piece [Ω per whole charge]. */
    public double slopeOhms(int which, int piece) {
        if (piece == 0 || piece == charge.length) {
            return 0;
        }
        return (ohms[which][piece] - ohms[which][piece - 1]) / (charge[piece] - charge[piece - 1]);
    }

    /** Resistance [Ω] at a charge fraction; which is 0, 1 or 2. */
    public double ohms(int which, double chargeFraction) {
        int piece = piece(chargeFraction);
        return interceptOhms(which, piece) + slopeOhms(which, piece) * chargeFraction;
    }

    /** Largest value of one of the resistances [Ω]. */
    public double largestOhms(int which) {
        return Arrays.stream(ohms[which]).max().orElse(0);
    }

    /** Smallest value of one of the resistances [Ω]. */
    public double smallestOhms(int which) {
        return Arrays.stream(ohms[which]).min().orElse(0);
    }
}
