package fettle.engine.pack.simulation;

import fettle.engine.cell.circuit.Arrhenius;
import fettle.engine.cell.circuit.CellCircuit;
import fettle.engine.cell.circuit.OpenCircuit;
import fettle.engine.cell.circuit.Resistances;
import java.util.List;

/**
 * What the hot loop needs to know of every cell, cell after cell in one array: figures of the cell, of the time step, the
 * straight pieces of its tables it is on, and anchors of its exponentials. Cell n begins at n · {@link #STRIDE}.
 */
final class CellFigures {
    /** Figures of the cell and the length of the time step. */
    static final int PER_COULOMB_STEP = 0;

    static final int ACTIVATION_KELVINS = 1;
    static final int X1_OHMS = 2;
    static final int X2_OHMS = 3;
    static final int PER_X1_OHMS = 4;
    static final int PER_X2_OHMS = 5;
    static final int HALF_WARMING = 6;
    static final int HALF_COOLING = 7;
    static final int KEPT_RISE = 8;
    static final int KELVINS_PER_JOULE = 9;

    /** The straight pieces: charges between which both hold, and their lines (resistances at 25 °C). */
    static final int FROM = 10;

    static final int TO = 11;
    static final int REST_AT_0 = 12;
    static final int REST_SLOPE = 13;
    static final int R0_AT_0 = 14;
    static final int R0_SLOPE = 15;
    static final int R1_AT_0 = 16;
    static final int R1_SLOPE = 17;
    static final int R2_AT_0 = 18;
    static final int R2_SLOPE = 19;

    /** Anchors, each followed by its exponential. */
    static final int FACTOR_ANCHOR = 20;

    static final int DECAY1_ANCHOR = 22;
    static final int DECAY2_ANCHOR = 24;

    /** Of the step in hand: what of the pairs' way to their end is gone, and that times their resistance. */
    static final int GONE1 = 26;

    static final int GONE2 = 27;
    static final int GONE1_OHMS = 28;
    static final int GONE2_OHMS = 29;

    /** What the mean polarisation is made of. */
    static final int POLARISATION_OHMS = 30;

    static final int PAIR_VOLTS = 31;

    /** Share of the current that stays, what half a step moves of it, and how far the mean was put right. */
    static final int STAYS = 32;

    static final int HALF_MOVED = 33;
    static final int OFFSET = 34;
    static final int STRIDE = 35;

    private static final int[] AT_0 = {R0_AT_0, R1_AT_0, R2_AT_0};

    private final CellCircuit[] circuits;
    final double[] of;

    CellFigures(List<CellCircuit> cells) {
        circuits = cells.toArray(CellCircuit[]::new);
        of = new double[circuits.length * STRIDE];
        for (int cell = 0; cell < circuits.length; cell++) {
            int at = cell * STRIDE;
            of[at + FROM] = Double.NaN;
            of[at + FACTOR_ANCHOR] = Double.NaN;
            of[at + STAYS] = 1;
            of[at + ACTIVATION_KELVINS] = circuits[cell].arrhenius().activationJoulesPerMole() / Arrhenius.GAS_CONSTANT;
        }
    }

    CellCircuit circuit(int cell) {
        return circuits[cell];
    }

    /** Figures that follow from the length of the time step [s]. */
    void setStep(double dt) {
        for (int cell = 0; cell < circuits.length; cell++) {
            CellCircuit circuit = circuits[cell];
            int at = cell * STRIDE;
            double perJoule = 1 / circuit.thermal().joulesPerKelvin();
            double rate = circuit.thermal().wattsPerKelvin() * perJoule;
            of[at + PER_COULOMB_STEP] = dt / circuit.capacityCoulombs();
            of[at + X1_OHMS] = -dt / circuit.c1Farads();
            of[at + X2_OHMS] = -dt / circuit.c2Farads();
            of[at + PER_X1_OHMS] = circuit.c1Farads() / dt;
            of[at + PER_X2_OHMS] = circuit.c2Farads() / dt;
            of[at + HALF_WARMING] = -0.5 * dt * perJoule * of[at + ACTIVATION_KELVINS];
            of[at + HALF_COOLING] = -0.5 * dt * rate * of[at + ACTIVATION_KELVINS];
            of[at + KEPT_RISE] = Math.exp(-rate * dt);
            // mean heat flow over the step into the node: (1 − exp(−h·dt/C))/(h·dt) kelvin per joule
            of[at + KELVINS_PER_JOULE] = rate > 0 ? -Math.expm1(-rate * dt) * perJoule / (rate * dt) : perJoule;
            of[at + DECAY1_ANCHOR] = Double.NaN;
            of[at + DECAY2_ANCHOR] = Double.NaN;
            setStays(cell, of[at + STAYS]);
        }
    }

    /** Sets the share of a cell's current that stays. */
    void setStays(int cell, double share) {
        int at = cell * STRIDE;
        of[at + STAYS] = share;
        of[at + HALF_MOVED] = 0.5 * share * of[at + PER_COULOMB_STEP];
    }

    /** Moves a cell to the pieces its charge is on. */
    void renewPieces(int cell, double charge) {
        int at = cell * STRIDE;
        if (charge >= of[at + FROM] && charge <= of[at + TO]) {
            return;
        }
        OpenCircuit rest = circuits[cell].rest();
        int piece = rest.piece(charge);
        Resistances resistances = circuits[cell].resistances();
        int row = resistances.piece(charge);
        of[at + FROM] = Math.max(rest.pieceFrom(piece), resistances.pieceFrom(row));
        of[at + TO] = Math.min(rest.pieceTo(piece), resistances.pieceTo(row));
        of[at + REST_AT_0] = rest.volts(piece, 0);
        of[at + REST_SLOPE] = rest.slopeVolts(piece);
        for (int which = 0; which < AT_0.length; which++) {
            of[at + AT_0[which]] = resistances.interceptOhms(which, row);
            of[at + AT_0[which] + 1] = resistances.slopeOhms(which, row);
        }
    }
}
