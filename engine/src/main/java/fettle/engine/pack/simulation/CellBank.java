package fettle.engine.pack.simulation;

import fettle.engine.cell.circuit.CellCircuit;
import fettle.engine.cell.circuit.OpenCircuit;
import fettle.engine.cell.circuit.Resistances;
import java.util.Arrays;
import java.util.List;

/**
 * Steps all cells through one time step of held currents. The hot loop; not thread-safe.
 *
 * <p>Pairs and temperature follow their exact exponential. Exponentials are costly, so each is kept with its tangent and
 * renewed when its argument has moved by half a thousandth (its error is then below 1e-7 of itself); curve and resistance
 * pieces are kept until the charge leaves them.
 */
final class CellBank {
    /** Relative change of a resistance after which the pairs' exponentials are computed anew. */
    private static final double TANGENT_REACH = 5e-4;

    /** Change of temperature after which the temperature factor is computed anew [K]. */
    private static final double TANGENT_REACH_KELVINS = 0.02;

    private final int size;
    private final CellCircuit[] circuits;
    private final double ambientKelvins;
    private final double[] perCoulomb;
    private final double[] c1;
    private final double[] c2;
    private final double[] efficiency;

    private final double[] restFrom;
    private final double[] restTo;
    private final double[] restAt0;
    private final double[] restSlope;

    private final double[] ohmsFrom;
    private final double[] ohmsTo;
    private final double[][] ohmsAt0;
    private final double[][] ohmsSlope;

    private final double[] factorKelvins;
    private final double[] factor;
    private final double[] factorSlope;

    private final double[] tangent1Ohms;
    private final double[] gone1;
    private final double[] gone1Slope;
    private final double[] tangent2Ohms;
    private final double[] gone2;
    private final double[] gone2Slope;

    private final double[] keptRise;
    private final double[] kelvinsPerJoule;

    /** Of the step in hand: share of the pairs' way to their end gone, polarisation [Ω], [V], and assumed efficiency. */
    private final double[] stepGone1;

    private final double[] stepGone2;
    private final double[] stepOhms;
    private final double[] stepPairVolts;
    private final double[] stepEfficiency;
    private final double[] offset;

    /** Mean electromotive force [V] and resistance [Ω] of every cell over the step in hand. */
    final double[] meanEmf;

    final double[] meanOhms;

    private double stepSeconds = Double.NaN;
    private double heatJoules;

    CellBank(List<CellCircuit> cells, double ambientKelvins) {
        this.ambientKelvins = ambientKelvins;
        circuits = cells.toArray(CellCircuit[]::new);
        size = circuits.length;
        perCoulomb =
                cells.stream().mapToDouble(cell -> 1 / cell.capacityCoulombs()).toArray();
        c1 = cells.stream().mapToDouble(CellCircuit::c1Farads).toArray();
        c2 = cells.stream().mapToDouble(CellCircuit::c2Farads).toArray();
        efficiency = cells.stream().mapToDouble(CellCircuit::chargeEfficiency).toArray();
        restFrom = filled(Double.NaN);
        restTo = filled(Double.NaN);
        restAt0 = new double[size];
        restSlope = new double[size];
        ohmsFrom = filled(Double.NaN);
        ohmsTo = filled(Double.NaN);
        ohmsAt0 = new double[3][size];
        ohmsSlope = new double[3][size];
        factorKelvins = filled(Double.NaN);
        factor = new double[size];
        factorSlope = new double[size];
        tangent1Ohms = filled(Double.NaN);
        gone1 = new double[size];
        gone1Slope = new double[size];
        tangent2Ohms = filled(Double.NaN);
        gone2 = new double[size];
        gone2Slope = new double[size];
        keptRise = new double[size];
        kelvinsPerJoule = new double[size];
        stepGone1 = new double[size];
        stepGone2 = new double[size];
        stepOhms = new double[size];
        stepPairVolts = new double[size];
        stepEfficiency = new double[size];
        offset = new double[size];
        meanEmf = new double[size];
        meanOhms = new double[size];
    }

    private double[] filled(double value) {
        double[] array = new double[size];
        Arrays.fill(array, value);
        return array;
    }

    /** Heat made in all cells during the last step [J]. */
    double heatJoules() {
        return heatJoules;
    }

    /** What follows from charge, pair volts and temperature of every cell. */
    void complete(CellStates state) {
        for (int cell = 0; cell < size; cell++) {
            complete(state, cell);
        }
    }

    /**
     * Mean electromotive force and resistance of every cell over a step that begins with a state.
     *
     * <p>Legend: b share of the pair's first volts in its mean, g share of its way gone, x = dt/(R·C).
     *
     * @param lastAmps the cells' currents before the step, for the direction [A]
     */
    void mean(CellStates now, double dt, double[] lastAmps) {
        setStep(dt);
        double perSecond = 1 / dt;
        for (int cell = 0; cell < size; cell++) {
            double r1 = now.r1[cell];
            double r2 = now.r2[cell];
            double g1 = gone1(cell, r1, dt);
            double g2 = gone2(cell, r2, dt);
            // mean of v = R·I − (R·I − v0)·exp(−t/RC) over the step
            double b1 = g1 * r1 * c1[cell] * perSecond;
            double b2 = g2 * r2 * c2[cell] * perSecond;
            double pairVolts = now.pair1Volts[cell] * b1 + now.pair2Volts[cell] * b2;
            double ohms = now.r0[cell] + r1 * (1 - b1) + r2 * (1 - b2);
            double stays = lastAmps[cell] < 0 ? efficiency[cell] : 1;
            stepGone1[cell] = g1;
            stepGone2[cell] = g2;
            stepOhms[cell] = ohms;
            stepPairVolts[cell] = pairVolts;
            stepEfficiency[cell] = stays;
            // mean of rest(z0 − I·t/Q) over the step, on the straight piece of z0
            meanOhms[cell] = ohms + 0.5 * dt * stays * now.restSlope[cell] * perCoulomb[cell];
            meanEmf[cell] = now.restVolts[cell] - pairVolts;
        }
    }

    /**
     * The state after the step in hand with given currents.
     *
     * @return true if every mean held; false if a cell left its straight piece or turned, so that {@link #correct} is wanted
     */
    boolean advance(CellStates now, CellStates next, double[] amps) {
        double dt = stepSeconds;
        double heat = 0;
        boolean held = true;
        for (int cell = 0; cell < size; cell++) {
            double current = amps[cell];
            double charge = now.charge[cell];
            double stays = current < 0 ? efficiency[cell] : 1;
            double passed = current * dt;
            double after = charge - stays * passed * perCoulomb[cell];
            held &= stays == stepEfficiency[cell] && onPiece(cell, charge) && onPiece(cell, after);
            double v1 = now.pair1Volts[cell];
            double v2 = now.pair2Volts[cell];
            next.charge[cell] = after;
            next.pair1Volts[cell] = v1 + (now.r1[cell] * current - v1) * stepGone1[cell];
            next.pair2Volts[cell] = v2 + (now.r2[cell] * current - v2) * stepGone2[cell];
            double polarisation = current * stepOhms[cell] + stepPairVolts[cell];
            double cellHeat = passed * polarisation;
            if (stays != 1) {
                double terminal = meanEmf[cell] - current * meanOhms[cell];
                cellHeat -= (1 - stays) * passed * (terminal + polarisation);
            }
            heat += cellHeat;
            next.kelvins[cell] = ambientKelvins
                    + (now.kelvins[cell] - ambientKelvins) * keptRise[cell]
                    + cellHeat * kelvinsPerJoule[cell];
            complete(next, cell);
        }
        heatJoules = heat;
        return held;
    }

    /**
     * Puts right the means of cells that left their straight piece or turned.
     *
     * @return the largest correction [V]
     */
    double correct(CellStates now, CellStates next, double[] amps) {
        double largest = 0;
        for (int cell = 0; cell < size; cell++) {
            double assumed = now.restVolts[cell]
                    - 0.5 * stepSeconds * stepEfficiency[cell] * now.restSlope[cell] * perCoulomb[cell] * amps[cell];
            double wanted = circuits[cell].rest().meanVolts(now.charge[cell], next.charge[cell]) - assumed;
            largest = Math.max(largest, Math.abs(wanted - offset[cell]));
            meanEmf[cell] += wanted - offset[cell];
            offset[cell] = wanted;
        }
        return largest;
    }

    /** Forgets the corrections of the step before. */
    void clearCorrections() {
        Arrays.fill(offset, 0);
    }

    private boolean onPiece(int cell, double charge) {
        return charge >= restFrom[cell] && charge <= restTo[cell];
    }

    private void complete(CellStates state, int cell) {
        double charge = state.charge[cell];
        if (!onPiece(cell, charge)) {
            renewRest(cell, charge);
        }
        if (!(charge >= ohmsFrom[cell] && charge <= ohmsTo[cell])) {
            renewOhms(cell, charge);
        }
        double kelvins = state.kelvins[cell];
        double off = kelvins - factorKelvins[cell];
        if (!(Math.abs(off) <= TANGENT_REACH_KELVINS)) {
            renewFactor(cell, kelvins);
            off = 0;
        }
        double k = factor[cell] + factorSlope[cell] * off;
        double rest = restAt0[cell] + restSlope[cell] * charge;
        state.restVolts[cell] = rest;
        state.restSlope[cell] = restSlope[cell];
        state.r0[cell] = k * (ohmsAt0[0][cell] + ohmsSlope[0][cell] * charge);
        state.r1[cell] = k * (ohmsAt0[1][cell] + ohmsSlope[1][cell] * charge);
        state.r2[cell] = k * (ohmsAt0[2][cell] + ohmsSlope[2][cell] * charge);
        state.emf[cell] = rest - state.pair1Volts[cell] - state.pair2Volts[cell];
    }

    private void renewRest(int cell, double charge) {
        OpenCircuit rest = circuits[cell].rest();
        int piece = rest.piece(charge);
        restFrom[cell] = rest.pieceFrom(piece);
        restTo[cell] = rest.pieceTo(piece);
        restSlope[cell] = rest.slopeVolts(piece);
        restAt0[cell] = rest.volts(piece, 0);
    }

    private void renewOhms(int cell, double charge) {
        Resistances resistances = circuits[cell].resistances();
        int piece = resistances.piece(charge);
        ohmsFrom[cell] = resistances.pieceFrom(piece);
        ohmsTo[cell] = resistances.pieceTo(piece);
        for (int which = 0; which < ohmsAt0.length; which++) {
            ohmsAt0[which][cell] = resistances.interceptOhms(which, piece);
            ohmsSlope[which][cell] = resistances.slopeOhms(which, piece);
        }
    }

    private void renewFactor(int cell, double kelvins) {
        factorKelvins[cell] = kelvins;
        factor[cell] = circuits[cell].arrhenius().factor(kelvins);
        factorSlope[cell] = factor[cell] * circuits[cell].arrhenius().relativeSlope(kelvins);
    }

    private double gone1(int cell, double ohms, double dt) {
        double off = ohms - tangent1Ohms[cell];
        if (!(Math.abs(off) <= TANGENT_REACH * ohms)) {
            tangent1Ohms[cell] = ohms;
            gone1[cell] = gone(ohms, c1[cell], dt);
            gone1Slope[cell] = goneSlope(gone1[cell], ohms, c1[cell], dt);
            off = 0;
        }
        return gone1[cell] + gone1Slope[cell] * off;
    }

    private double gone2(int cell, double ohms, double dt) {
        double off = ohms - tangent2Ohms[cell];
        if (!(Math.abs(off) <= TANGENT_REACH * ohms)) {
            tangent2Ohms[cell] = ohms;
            gone2[cell] = gone(ohms, c2[cell], dt);
            gone2Slope[cell] = goneSlope(gone2[cell], ohms, c2[cell], dt);
            off = 0;
        }
        return gone2[cell] + gone2Slope[cell] * off;
    }

    /** 1 − exp(−dt/(R·C)); a pair without resistance is always at its end. */
    private static double gone(double ohms, double farads, double dt) {
        return ohms == 0 ? 1 : -Math.expm1(-dt / (ohms * farads));
    }

    private static double goneSlope(double gone, double ohms, double farads, double dt) {
        return ohms == 0 ? 0 : -(1 - gone) * dt / (ohms * ohms * farads);
    }

    private void setStep(double dt) {
        if (dt == stepSeconds) {
            return;
        }
        stepSeconds = dt;
        Arrays.fill(tangent1Ohms, Double.NaN);
        Arrays.fill(tangent2Ohms, Double.NaN);
        for (int cell = 0; cell < size; cell++) {
            double transfer = circuits[cell].thermal().wattsPerKelvin();
            double capacity = circuits[cell].thermal().joulesPerKelvin();
            double rate = transfer / capacity;
            keptRise[cell] = Math.exp(-rate * dt);
            // mean heat flow over the step into the node: (1 − exp(−h·dt/C))/(h·dt) kelvin per joule
            kelvinsPerJoule[cell] = rate == 0 ? 1 / capacity : -Math.expm1(-rate * dt) / (transfer * dt);
        }
    }
}
