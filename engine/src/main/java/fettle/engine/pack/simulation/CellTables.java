package fettle.engine.pack.simulation;

import fettle.engine.cell.circuit.CellCircuit;
import fettle.engine.cell.circuit.OpenCircuit;
import fettle.engine.cell.circuit.Resistances;
import java.util.Arrays;

/** The straight piece of its rest-voltage and resistance tables each cell is on. Plain arrays for the hot loop. */
final class CellTables {
    private final CellCircuit[] circuits;

    /** Charges between which both pieces hold. */
    final double[] from;

    final double[] to;

    /** Rest volts at charge 0 and their slope. */
    final double[] restAt0;

    final double[] restSlope;

    /** Resistances at charge 0 and their slopes, at 25 °C [Ω]. */
    final double[] r0At0;

    final double[] r0Slope;
    final double[] r1At0;
    final double[] r1Slope;
    final double[] r2At0;
    final double[] r2Slope;

    CellTables(CellCircuit[] circuits) {
        this.circuits = circuits;
        int size = circuits.length;
        from = new double[size];
        to = new double[size];
        Arrays.fill(from, Double.NaN);
        restAt0 = new double[size];
        restSlope = new double[size];
        r0At0 = new double[size];
        r0Slope = new double[size];
        r1At0 = new double[size];
        r1Slope = new double[size];
        r2At0 = new double[size];
        r2Slope = new double[size];
    }

    /** Moves every cell to the pieces its charge is on. */
    void renew(double[] charge) {
        for (int cell = 0; cell < circuits.length; cell++) {
            if (!(charge[cell] >= from[cell] && charge[cell] <= to[cell])) {
                renew(cell, charge[cell]);
            }
        }
    }

    private void renew(int cell, double charge) {
        OpenCircuit rest = circuits[cell].rest();
        int piece = rest.piece(charge);
        restSlope[cell] = rest.slopeVolts(piece);
        restAt0[cell] = rest.volts(piece, 0);
        Resistances resistances = circuits[cell].resistances();
        int row = resistances.piece(charge);
        from[cell] = Math.max(rest.pieceFrom(piece), resistances.pieceFrom(row));
        to[cell] = Math.min(rest.pieceTo(piece), resistances.pieceTo(row));
        r0At0[cell] = resistances.interceptOhms(0, row);
        r0Slope[cell] = resistances.slopeOhms(0, row);
        r1At0[cell] = resistances.interceptOhms(1, row);
        r1Slope[cell] = resistances.slopeOhms(1, row);
        r2At0[cell] = resistances.interceptOhms(2, row);
        r2Slope[cell] = resistances.slopeOhms(2, row);
    }
}
