package fettle.engine.health.identification;

/**
 * One set of the parameters that are sought.
 *
 * @param ohms R0, then one resistance per pair [Ω]
 * @param logTau natural logarithm of the time constant of each pair [ln s]
 * @param startCharge charge at the first row, fraction
 * @param logCapacity natural logarithm of capacity [ln C]
 * @param delaySeconds how much later volts are logged than amps [s]
 */
record CircuitPoint(double[] ohms, double[] logTau, double startCharge, double logCapacity, double delaySeconds) {
    int pairs() {
        return logTau.length;
    }

    /** Count of parameters sought: all, or all but the delay. */
    int size(boolean delayFree) {
        return 2 * pairs() + 3 + (delayFree ? 1 : 0);
    }

    CircuitPoint withDelay(double seconds) {
        return new CircuitPoint(ohms, logTau, startCharge, logCapacity, seconds);
    }

    /**
     * This point moved by a step, resistances by no more than nine tenths of the way to nothing.
     *
     * @param shortest least time constant a window can show, natural logarithm [ln s]
     * @param longest largest time constant it can show [ln s]
     */
    CircuitPoint towards(double[] step, double shortest, double longest) {
        CircuitPoint moved = plus(step);
        for (int i = 0; i < ohms.length; i++) {
            moved.ohms[i] = Math.max(moved.ohms[i], 0.1 * ohms[i]);
        }
        for (int i = 0; i < logTau.length; i++) {
            moved.logTau[i] = Math.max(shortest, Math.min(longest, moved.logTau[i]));
        }
        return moved;
    }

    /** This point moved by a step in the order ohms, log time constants, start charge, log capacity, delay. */
    CircuitPoint plus(double[] step) {
        double[] movedOhms = ohms.clone();
        double[] movedTau = logTau.clone();
        int at = 0;
        for (int i = 0; i < ohms.length; i++) {
            movedOhms[i] += step[at++];
        }
        for (int i = 0; i < logTau.length; i++) {
            movedTau[i] += step[at++];
        }
        double charge = startCharge + step[at++];
        double capacity = logCapacity + step[at++];
        return new CircuitPoint(
                movedOhms, movedTau, charge, capacity, at < step.length ? delaySeconds + step[at] : delaySeconds);
    }
}
