package fettle.engine.pack.simulation;

/** State of every cell at one instant, and what follows from it. Plain arrays for the hot loop. */
final class CellStates {
    final double[] charge;
    final double[] pair1Volts;
    final double[] pair2Volts;
    final double[] kelvins;

    /** Rest volts at the charge [V]. */
    final double[] restVolts;

    /** Resistances at charge and temperature [Ω]. */
    final double[] r0;

    final double[] r1;
    final double[] r2;

    /** One over the temperature [1/K]. */
    final double[] perKelvin;

    /** Temperature factor on the resistances. */
    final double[] factor;

    /** Rest volts less the pairs' volts: what stands behind R0 [V]. */
    final double[] emf;

    CellStates(int cells) {
        charge = new double[cells];
        pair1Volts = new double[cells];
        pair2Volts = new double[cells];
        kelvins = new double[cells];
        restVolts = new double[cells];
        perKelvin = new double[cells];
        r0 = new double[cells];
        r1 = new double[cells];
        r2 = new double[cells];
        factor = new double[cells];
        emf = new double[cells];
    }
}
