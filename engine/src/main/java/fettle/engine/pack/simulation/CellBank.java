package fettle.engine.pack.simulation;

import static fettle.engine.pack.simulation.CellFigures.*;
import static fettle.engine.pack.simulation.CellStates.CHARGE;
import static fettle.engine.pack.simulation.CellStates.FACTOR;
import static fettle.engine.pack.simulation.CellStates.KELVINS;
import static fettle.engine.pack.simulation.CellStates.PAIR1_VOLTS;
import static fettle.engine.pack.simulation.CellStates.PAIR2_VOLTS;
import static fettle.engine.pack.simulation.CellStates.PER_KELVIN;
import static fettle.engine.pack.simulation.CellStates.REST_VOLTS;

import fettle.engine.cell.circuit.Arrhenius;
import fettle.engine.cell.circuit.CellCircuit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Steps all cells through one time step of held currents. The hot loop; not thread-safe.
 *
 * <p>Pairs and temperature follow their exact exponential, with the resistances of the middle of the step. Loops run straight
 * through; where a cell has left what is kept for it (piece of a table, anchor of an exponential), that is renewed and the loop
 * run again.
 */
final class CellBank {
    /** Stands for a pair without resistance and keeps dt/(R·C) finite; whatever is below {@link #LEAST_OHMS} is taken as such. */
    private static final double NO_OHMS = 1e-200;

    private static final double LEAST_OHMS = 1e-100;

    private static final double PER_REFERENCE_KELVIN = 1 / Arrhenius.REFERENCE_KELVINS;

    private final int size;
    private final double ambientKelvins;
    private final boolean lossless;
    private final CellFigures figures;

    /** Mean electromotive force [V] and resistance [Ω] of every cell over the step in hand. */
    final double[] meanEmf;

    final double[] meanOhms;

    /** The state whose straight pieces are kept. */
    private @Nullable CellStates completed;

    private double stepSeconds = Double.NaN;
    private double heatJoules;
    private double lowestCharge;
    private double highestCharge;
    private double hottestKelvins;

    CellBank(List<CellCircuit> cells, double ambientKelvins) {
        this.ambientKelvins = ambientKelvins;
        size = cells.size();
        lossless = cells.stream().allMatch(cell -> cell.chargeEfficiency() >= 1);
        figures = new CellFigures(cells);
        meanEmf = new double[size];
        meanOhms = new double[size];
    }

    /** Heat made in all cells during the last step [J]. */
    double heatJoules() {
        return heatJoules;
    }

    /** Extremes of the state last begun or advanced to. */
    double lowestCharge() {
        return lowestCharge;
    }

    double highestCharge() {
        return highestCharge;
    }

    double hottestKelvins() {
        return hottestKelvins;
    }

    /**
     * Mean electromotive force and resistance of every cell over a step that begins with a state.
     *
     * @param firstAmps the cells' currents at the beginning of the step, from which its middle is foreseen [A]
     */
    void mean(CellStates now, double dt, double[] firstAmps) {
        if (dt < stepSeconds || dt > stepSeconds || Double.isNaN(stepSeconds)) {
            stepSeconds = dt;
            figures.setStep(dt);
        }
        setStays(firstAmps);
        if (now != completed) {
            renewPieces(now);
            completed = now;
        }
        if (!meanOfKept(now, firstAmps, false)) {
            meanOfKept(now, firstAmps, true);
        }
    }

    /**
     * Legend: b share of the pair's first volts in its mean, g share of its way gone, x = −dt/(R·C).
     *
     * @param renewing whether to renew anchors out of reach
     * @return whether all anchors were in reach
     */
    private boolean meanOfKept(CellStates now, double[] firstAmps, boolean renewing) {
        double[] c = figures.of;
        double[] z = now.of;
        double[] startOhms = now.r0;
        double[] emf = meanEmf;
        double[] ohms = meanOhms;
        boolean kept = true;
        for (int cell = 0; cell < size; cell++) {
            int at = cell * STRIDE;
            int s = cell * CellStates.STRIDE;
            double current = firstAmps[cell];
            double v1 = z[s + PAIR1_VOLTS];
            double v2 = z[s + PAIR2_VOLTS];
            double rest = z[s + REST_VOLTS];
            double perKelvin = z[s + PER_KELVIN];
            double halfMoved = c[at + HALF_MOVED];
            // the middle of the step: what charge and temperature make of the resistances
            double polarised = current * startOhms[cell] + v1 + v2;
            double watts = current * (lossless ? polarised : polarised - (1 - c[at + STAYS]) * rest);
            double warmer = 1
                    + (watts * c[at + HALF_WARMING] - (z[s + KELVINS] - ambientKelvins) * c[at + HALF_COOLING])
                            * (perKelvin * perKelvin);
            double middle = z[s + CHARGE] - halfMoved * current;
            double factor = z[s + FACTOR] * warmer;
            double line1 = c[at + R1_AT_0] + c[at + R1_SLOPE] * middle;
            double line2 = c[at + R2_AT_0] + c[at + R2_SLOPE] * middle;
            // a table that comes down to nothing may miss it by rounding
            double r0 = factor * (c[at + R0_AT_0] + c[at + R0_SLOPE] * middle);
            double r1 = line1 > LEAST_OHMS ? factor * line1 : NO_OHMS;
            double r2 = line2 > LEAST_OHMS ? factor * line2 : NO_OHMS;
            double x1 = c[at + X1_OHMS] / r1;
            double x2 = c[at + X2_OHMS] / r2;
            if (renewing) {
                NearExponential.renew(c, at + DECAY1_ANCHOR, x1);
                NearExponential.renew(c, at + DECAY2_ANCHOR, x2);
            }
            double off1 = x1 - c[at + DECAY1_ANCHOR];
            double off2 = x2 - c[at + DECAY2_ANCHOR];
            kept &= NearExponential.reaches(off1, off2);
            double g1 = 1 - c[at + DECAY1_ANCHOR + 1] * NearExponential.ofSmall(off1);
            double g2 = 1 - c[at + DECAY2_ANCHOR + 1] * NearExponential.ofSmall(off2);
            double gone1 = g1 * r1;
            double gone2 = g2 * r2;
            // mean of v = R·I − (R·I − v0)·exp(−t/RC) over the step
            double b1 = gone1 * c[at + PER_X1_OHMS];
            double b2 = gone2 * c[at + PER_X2_OHMS];
            double pairs = v1 * b1 + v2 * b2;
            double polarisation = (r0 + r1) + (r2 - r1 * b1) - r2 * b2;
            c[at + GONE1] = g1;
            c[at + GONE2] = g2;
            c[at + GONE1_OHMS] = gone1;
            c[at + GONE2_OHMS] = gone2;
            c[at + POLARISATION_OHMS] = polarisation;
            c[at + PAIR_VOLTS] = pairs;
            // mean of rest(z0 − I·t/Q) over the step, on the straight piece of z0
            ohms[cell] = polarisation + halfMoved * c[at + REST_SLOPE];
            emf[cell] = rest - pairs;
        }
        return kept;
    }

    private void renewPieces(CellStates state) {
        for (int cell = 0; cell < size; cell++) {
            figures.renewPieces(cell, state.charge(cell));
        }
    }

    /** Sets the share of each cell's current that stays; returns whether one changed. */
    private boolean setStays(double[] amps) {
        boolean changed = false;
        for (int cell = 0; !lossless && cell < size; cell++) {
            double share = amps[cell] < 0 ? figures.circuit(cell).chargeEfficiency() : 1;
            double before = figures.of[cell * STRIDE + STAYS];
            changed |= share < before || share > before;
            figures.setStays(cell, share);
        }
        return changed;
    }

    /**
     * Puts right the means of cells that left their straight piece or turned.
     *
     * @return the largest correction [V]
     */
    double correct(CellStates now, CellStates next, double[] amps) {
        double largest = 0;
        for (int cell = 0; cell < size; cell++) {
            int at = cell * STRIDE;
            double fallOhms = meanOhms[cell] - figures.of[at + POLARISATION_OHMS];
            double assumed = now.restVolts(cell) - fallOhms * amps[cell];
            double wanted = figures.circuit(cell).rest().meanVolts(now.charge(cell), next.charge(cell)) - assumed;
            double change = wanted - figures.of[at + OFFSET];
            largest = Math.max(largest, Math.abs(change));
            meanEmf[cell] += change;
            figures.of[at + OFFSET] = wanted;
        }
        return largest;
    }

    /** Forgets the corrections of the step before. */
    void clearCorrections() {
        for (int cell = 0; cell < size; cell++) {
            figures.of[cell * STRIDE + OFFSET] = 0;
        }
    }

    /**
     * The state after the step in hand with given currents; {@link #complete} is to follow once every mean holds.
     *
     * @return true if every mean holds; false if a cell leaves its straight piece or turns, so that {@link #correct} is wanted
     */
    boolean advance(CellStates now, CellStates next, double[] amps) {
        boolean held = !setStays(amps);
        double[] c = figures.of;
        double[] z = now.of;
        double[] after = next.of;
        double[] emf = meanEmf;
        double[] ohms = meanOhms;
        double dt = stepSeconds;
        double heat = 0;
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        double hottest = Double.NEGATIVE_INFINITY;
        boolean kept = true;
        for (int cell = 0; cell < size; cell++) {
            int at = cell * STRIDE;
            int s = cell * CellStates.STRIDE;
            double current = amps[cell];
            double stays = c[at + STAYS];
            double v1 = z[s + PAIR1_VOLTS];
            double v2 = z[s + PAIR2_VOLTS];
            double polarisation = current * c[at + POLARISATION_OHMS] + c[at + PAIR_VOLTS];
            if (!lossless) {
                polarisation -= (1 - stays) * (emf[cell] - current * ohms[cell] + polarisation);
            }
            double cellHeat = current * dt * polarisation;
            heat += cellHeat;
            double charge = z[s + CHARGE] - stays * current * c[at + PER_COULOMB_STEP];
            held &= charge >= c[at + FROM] & charge <= c[at + TO];
            after[s + CHARGE] = charge;
            after[s + PAIR1_VOLTS] = v1 - v1 * c[at + GONE1] + current * c[at + GONE1_OHMS];
            after[s + PAIR2_VOLTS] = v2 - v2 * c[at + GONE2] + current * c[at + GONE2_OHMS];
            double kelvins = ambientKelvins
                    + (z[s + KELVINS] - ambientKelvins) * c[at + KEPT_RISE]
                    + cellHeat * c[at + KELVINS_PER_JOULE];
            after[s + KELVINS] = kelvins;
            lowest = charge < lowest ? charge : lowest;
            highest = charge > highest ? charge : highest;
            hottest = kelvins > hottest ? kelvins : hottest;
            kept &= completeFromKept(c, at, next, cell);
        }
        heatJoules = heat;
        lowestCharge = lowest;
        highestCharge = highest;
        hottestKelvins = hottest;
        completed = held && kept ? next : null;
        return held;
    }

    /** Makes a state the first: what follows from it, and its extremes. */
    void begin(CellStates state) {
        complete(state);
        lowestCharge = Double.POSITIVE_INFINITY;
        highestCharge = Double.NEGATIVE_INFINITY;
        hottestKelvins = Double.NEGATIVE_INFINITY;
        for (int cell = 0; cell < size; cell++) {
            lowestCharge = Math.min(lowestCharge, state.charge(cell));
            highestCharge = Math.max(highestCharge, state.charge(cell));
            hottestKelvins = Math.max(hottestKelvins, state.kelvins(cell));
        }
    }

    /** What follows from charge, pair volts and temperature of every cell. */
    void complete(CellStates state) {
        if (completed != state) {
            renewPieces(state);
            double[] c = figures.of;
            for (int cell = 0; cell < size; cell++) {
                int at = cell * STRIDE;
                double argument = c[at + ACTIVATION_KELVINS] * (1 / state.kelvins(cell) - PER_REFERENCE_KELVIN);
                NearExponential.renew(c, at + FACTOR_ANCHOR, argument);
                completeFromKept(c, at, state, cell);
            }
            completed = state;
        }
    }

    private static boolean completeFromKept(double[] c, int at, CellStates state, int cell) {
        double[] z = state.of;
        int s = cell * CellStates.STRIDE;
        double charge = z[s + CHARGE];
        double perKelvin = 1 / z[s + KELVINS];
        double off = c[at + ACTIVATION_KELVINS] * (perKelvin - PER_REFERENCE_KELVIN) - c[at + FACTOR_ANCHOR];
        double k = c[at + FACTOR_ANCHOR + 1] * NearExponential.ofSmall(off);
        double rest = c[at + REST_AT_0] + c[at + REST_SLOPE] * charge;
        z[s + PER_KELVIN] = perKelvin;
        z[s + FACTOR] = k;
        z[s + REST_VOLTS] = rest;
        state.r0[cell] = k * (c[at + R0_AT_0] + c[at + R0_SLOPE] * charge);
        state.emf[cell] = rest - z[s + PAIR1_VOLTS] - z[s + PAIR2_VOLTS];
        return NearExponential.reaches(off);
    }
}
