package fettle.engine.pack.simulation;

import fettle.engine.cell.circuit.Arrhenius;
import fettle.engine.cell.circuit.CellCircuit;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Steps all cells through one time step of held currents. The hot loop; not thread-safe.
 *
 * <p>Pairs and temperature follow their exact exponential, with the resistances of the middle of the step. Loops run straight
 * through; where a cell has left what is kept for it (piece of a table, anchor of an exponential), that is renewed and the loop
 * run again.
 */
final class CellBank {
    /** Keeps dt/(R·C) finite for a pair without resistance, and changes no other. */
    private static final double NO_OHMS = 1e-200;

    private static final double PER_REFERENCE_KELVIN = 1 / Arrhenius.REFERENCE_KELVINS;

    private final int size;
    private final CellCircuit[] circuits;
    private final double ambientKelvins;
    private final boolean lossless;
    private final double[] perCoulomb;
    private final double[] c1;
    private final double[] c2;
    private final double[] efficiency;
    private final double[] activationKelvins;
    private final double[] perJoule;
    private final double[] coolingRate;
    private final double[] keptRise;
    private final double[] kelvinsPerJoule;

    private final CellTables tables;
    private final NearExponential factors;
    private final NearExponential decay1;
    private final NearExponential decay2;

    /** Of the step in hand: what of the pairs' way to their end is gone, their resistances, what the mean is made of. */
    private final double[] gone1;

    private final double[] gone2;
    private final double[] r1;
    private final double[] r2;
    private final double[] polarisationOhms;
    private final double[] pairVolts;
    private final double[] stays;
    private final double[] fallOhms;
    private final double[] offset;

    /** Mean electromotive force [V] and resistance [Ω] of every cell over the step in hand. */
    final double[] meanEmf;

    final double[] meanOhms;

    private double stepSeconds = Double.NaN;
    private double heatJoules;
    private double lowestCharge;
    private double highestCharge;
    private double hottestKelvins;

    CellBank(List<CellCircuit> cells, double ambientKelvins) {
        this.ambientKelvins = ambientKelvins;
        circuits = cells.toArray(CellCircuit[]::new);
        size = circuits.length;
        perCoulomb = each(cell -> 1 / cell.capacityCoulombs());
        c1 = each(CellCircuit::c1Farads);
        c2 = each(CellCircuit::c2Farads);
        efficiency = each(CellCircuit::chargeEfficiency);
        lossless = Arrays.stream(efficiency).allMatch(share -> share >= 1);
        activationKelvins = each(cell -> cell.arrhenius().activationJoulesPerMole() / Arrhenius.GAS_CONSTANT);
        perJoule = each(cell -> 1 / cell.thermal().joulesPerKelvin());
        coolingRate =
                each(cell -> cell.thermal().wattsPerKelvin() / cell.thermal().joulesPerKelvin());
        keptRise = new double[size];
        kelvinsPerJoule = new double[size];
        tables = new CellTables(circuits);
        factors = new NearExponential(size);
        decay1 = new NearExponential(size);
        decay2 = new NearExponential(size);
        gone1 = new double[size];
        gone2 = new double[size];
        r1 = new double[size];
        r2 = new double[size];
        polarisationOhms = new double[size];
        pairVolts = new double[size];
        stays = each(cell -> 1);
        fallOhms = new double[size];
        offset = new double[size];
        meanEmf = new double[size];
        meanOhms = new double[size];
    }

    private double[] each(ToDoubleFunction<CellCircuit> figure) {
        return Arrays.stream(circuits).mapToDouble(figure).toArray();
    }

    /** Heat made in all cells during the last step [J]. */
    double heatJoules() {
        return heatJoules;
    }

    /** Extremes of the state last completed. */
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
        setStep(dt);
        setStays(firstAmps);
        if (!meanOfKept(now, firstAmps)) {
            tables.renew(now.charge);
            meanOfKept(now, firstAmps);
            for (int cell = 0; cell < size; cell++) {
                decay1.renew(cell, -dt / (c1[cell] * (r1[cell] + NO_OHMS)));
                decay2.renew(cell, -dt / (c2[cell] * (r2[cell] + NO_OHMS)));
            }
            meanOfKept(now, firstAmps);
        }
    }

    /** Legend: b share of the pair's first volts in its mean, g share of its way gone, x = −dt/(R·C). */
    private boolean meanOfKept(CellStates now, double[] firstAmps) {
        double dt = stepSeconds;
        double perSecond = 1 / dt;
        boolean kept = true;
        for (int cell = 0; cell < size; cell++) {
            double current = firstAmps[cell];
            double charge = now.charge[cell];
            double v1 = now.pair1Volts[cell];
            double v2 = now.pair2Volts[cell];
            double rest = now.restVolts[cell];
            double inverse = now.perKelvin[cell];
            double moved = stays[cell] * current * perCoulomb[cell];
            // the middle of the step: what charge and temperature add to the resistances
            double watts = current * (current * now.r0[cell] + v1 + v2 - (1 - stays[cell]) * rest);
            double kelvinsPerSecond = watts * perJoule[cell] - (now.kelvins[cell] - ambientKelvins) * coolingRate[cell];
            double warmer = 1 - 0.5 * dt * kelvinsPerSecond * activationKelvins[cell] * inverse * inverse;
            double halfCharge = -0.5 * dt * moved * now.factor[cell];
            double ohms0 = now.r0[cell] * warmer + tables.r0Slope[cell] * halfCharge;
            double ohms1 = now.r1[cell] * warmer + tables.r1Slope[cell] * halfCharge;
            double ohms2 = now.r2[cell] * warmer + tables.r2Slope[cell] * halfCharge;
            double off1 = -dt / (c1[cell] * (ohms1 + NO_OHMS)) - decay1.anchor[cell];
            double off2 = -dt / (c2[cell] * (ohms2 + NO_OHMS)) - decay2.anchor[cell];
            kept &= charge >= tables.from[cell]
                    & charge <= tables.to[cell]
                    & NearExponential.reaches(off1)
                    & NearExponential.reaches(off2);
            double g1 = 1 - decay1.atAnchor[cell] * NearExponential.ofSmall(off1);
            double g2 = 1 - decay2.atAnchor[cell] * NearExponential.ofSmall(off2);
            // mean of v = R·I − (R·I − v0)·exp(−t/RC) over the step
            double b1 = g1 * ohms1 * c1[cell] * perSecond;
            double b2 = g2 * ohms2 * c2[cell] * perSecond;
            double pairs = v1 * b1 + v2 * b2;
            double ohms = ohms0 + ohms1 * (1 - b1) + ohms2 * (1 - b2);
            // mean of rest(z0 − I·t/Q) over the step, on the straight piece of z0
            double fall = 0.5 * dt * stays[cell] * tables.restSlope[cell] * perCoulomb[cell];
            gone1[cell] = g1;
            gone2[cell] = g2;
            r1[cell] = ohms1;
            r2[cell] = ohms2;
            polarisationOhms[cell] = ohms;
            pairVolts[cell] = pairs;
            fallOhms[cell] = fall;
            meanOhms[cell] = ohms + fall;
            meanEmf[cell] = rest - pairs;
        }
        return kept;
    }

    /**
     * Charges after the step in hand with given currents.
     *
     * @return true if every mean holds; false if a cell leaves its straight piece or turns, so that {@link #correct} is wanted
     */
    boolean charge(CellStates now, CellStates next, double[] amps) {
        double dt = stepSeconds;
        boolean held = !setStays(amps);
        for (int cell = 0; cell < size; cell++) {
            double after = now.charge[cell] - stays[cell] * amps[cell] * dt * perCoulomb[cell];
            held &= after >= tables.from[cell] & after <= tables.to[cell];
            next.charge[cell] = after;
        }
        return held;
    }

    /** Sets the share of each cell's current that stays; returns whether one changed. */
    private boolean setStays(double[] amps) {
        boolean changed = false;
        for (int cell = 0; !lossless && cell < size; cell++) {
            double share = amps[cell] < 0 ? efficiency[cell] : 1;
            changed |= share < stays[cell] || share > stays[cell];
            stays[cell] = share;
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
            double assumed = now.restVolts[cell] - fallOhms[cell] * amps[cell];
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

    /** Pairs, heat and temperature after the step in hand, whose charges are known, and what follows from them. */
    void advance(CellStates now, CellStates next, double[] amps) {
        double dt = stepSeconds;
        double heat = 0;
        for (int cell = 0; cell < size; cell++) {
            double current = amps[cell];
            double v1 = now.pair1Volts[cell];
            double v2 = now.pair2Volts[cell];
            next.pair1Volts[cell] = v1 + (r1[cell] * current - v1) * gone1[cell];
            next.pair2Volts[cell] = v2 + (r2[cell] * current - v2) * gone2[cell];
            double polarisation = current * polarisationOhms[cell] + pairVolts[cell];
            if (!lossless && current < 0) {
                double meanRest = meanEmf[cell] - current * meanOhms[cell] + polarisation;
                polarisation -= (1 - efficiency[cell]) * meanRest;
            }
            double cellHeat = current * dt * polarisation;
            heat += cellHeat;
            next.kelvins[cell] = ambientKelvins
                    + (now.kelvins[cell] - ambientKelvins) * keptRise[cell]
                    + cellHeat * kelvinsPerJoule[cell];
        }
        heatJoules = heat;
        complete(next);
    }

    /** What follows from charge, pair volts and temperature of every cell. */
    void complete(CellStates state) {
        if (!completeFromKept(state)) {
            tables.renew(state.charge);
            for (int cell = 0; cell < size; cell++) {
                factors.renew(cell, activationKelvins[cell] * (1 / state.kelvins[cell] - PER_REFERENCE_KELVIN));
            }
            completeFromKept(state);
        }
    }

    private boolean completeFromKept(CellStates state) {
        boolean kept = true;
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        double hottest = Double.NEGATIVE_INFINITY;
        for (int cell = 0; cell < size; cell++) {
            double charge = state.charge[cell];
            double kelvins = state.kelvins[cell];
            double perKelvin = 1 / kelvins;
            double off = activationKelvins[cell] * (perKelvin - PER_REFERENCE_KELVIN) - factors.anchor[cell];
            kept &= charge >= tables.from[cell] & charge <= tables.to[cell] & NearExponential.reaches(off);
            double k = factors.atAnchor[cell] * NearExponential.ofSmall(off);
            double rest = tables.restAt0[cell] + tables.restSlope[cell] * charge;
            state.perKelvin[cell] = perKelvin;
            state.factor[cell] = k;
            state.restVolts[cell] = rest;
            state.r0[cell] = k * (tables.r0At0[cell] + tables.r0Slope[cell] * charge);
            state.r1[cell] = k * (tables.r1At0[cell] + tables.r1Slope[cell] * charge);
            state.r2[cell] = k * (tables.r2At0[cell] + tables.r2Slope[cell] * charge);
            state.emf[cell] = rest - state.pair1Volts[cell] - state.pair2Volts[cell];
            lowest = charge < lowest ? charge : lowest;
            highest = charge > highest ? charge : highest;
            hottest = kelvins > hottest ? kelvins : hottest;
        }
        lowestCharge = lowest;
        highestCharge = highest;
        hottestKelvins = hottest;
        return kept;
    }

    private void setStep(double dt) {
        if (dt == stepSeconds) {
            return;
        }
        stepSeconds = dt;
        decay1.forget();
        decay2.forget();
        for (int cell = 0; cell < size; cell++) {
            double rate = coolingRate[cell];
            keptRise[cell] = Math.exp(-rate * dt);
            // mean heat flow over the step into the node: (1 − exp(−h·dt/C))/(h·dt) kelvin per joule
            kelvinsPerJoule[cell] = rate == 0 ? perJoule[cell] : -Math.expm1(-rate * dt) * perJoule[cell] / (rate * dt);
        }
    }
}
