package fettle.engine.pack.simulation;

/**
 * State of every cell at one instant, and what follows from it, cell after cell in one array for the hot loop: the figures of
 * cell n begin at n · {@link #STRIDE}.
 */
final class CellStates {
    static final int CHARGE = 0;
    static final int PAIR1_VOLTS = 1;
    static final int PAIR2_VOLTS = 2;
    static final int KELVINS = 3;

    /** Rest volts at the charge [V]. */
    static final int REST_VOLTS = 4;

    /** One over the temperature [1/K]. */
    static final int PER_KELVIN = 5;

    /** Temperature factor on the resistances. */
    static final int FACTOR = 6;

    static final int STRIDE = 7;

    final double[] of;

    /** Rest volts less the pairs' volts: what stands behind R0 [V]. */
    final double[] emf;

    /** R0 at charge and temperature [Ω]. */
    final double[] r0;

    CellStates(int cells) {
        of = new double[cells * STRIDE];
        emf = new double[cells];
        r0 = new double[cells];
    }

    double charge(int cell) {
        return of[cell * STRIDE + CHARGE];
    }

    double kelvins(int cell) {
        return of[cell * STRIDE + KELVINS];
    }

    double restVolts(int cell) {
        return of[cell * STRIDE + REST_VOLTS];
    }

    void start(int cell, double charge, double kelvins) {
        of[cell * STRIDE + CHARGE] = charge;
        of[cell * STRIDE + KELVINS] = kelvins;
    }
}
