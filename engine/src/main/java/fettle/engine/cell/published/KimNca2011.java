package fettle.engine.cell.published;

import fettle.engine.working.Citation;

/**
 * Rest volts of a published NCA/graphite cell, 2.7 to 4.2 V, at every per cent of charge from 0 to 100.
 *
 * <p>Computed from the electrode functions and stoichiometries of the paper as parameterised in PyBaMM (V. Sulzer et
 * al., J. Open Res. Softw. 9 (2021) 14), solved so that 0 and 1 fall on the volts named above.
 *
 * @see "G.-H. Kim et al., J. Electrochem. Soc. 158 (2011) A955"
 */
public final class KimNca2011 {
    public static final Citation CITATION =
            Citation.published("G.-H. Kim et al., J. Electrochem. Soc. 158 (2011) A955");

    private static final double[] REST_VOLTS = {
        2.700000, 3.012686, 3.118097, 3.161001, 3.181584, 3.193904, 3.203576, 3.213066, 3.223429, 3.234883,
        3.247134, 3.259739, 3.272386, 3.284958, 3.297458, 3.309921, 3.322372, 3.334820, 3.347261, 3.359684,
        3.372073, 3.384414, 3.396694, 3.408903, 3.421031, 3.433072, 3.445020, 3.456870, 3.468617, 3.480253,
        3.491772, 3.503164, 3.514416, 3.525516, 3.536448, 3.547199, 3.557753, 3.568099, 3.578226, 3.588128,
        3.597802, 3.607253, 3.616487, 3.625515, 3.634354, 3.643021, 3.651538, 3.659928, 3.668213, 3.676419,
        3.684568, 3.692684, 3.700789, 3.708905, 3.717052, 3.725251, 3.733522, 3.741887, 3.750372, 3.759003,
        3.767814, 3.776848, 3.786154, 3.795790, 3.805815, 3.816282, 3.827212, 3.838583, 3.850303, 3.862221,
        3.874153, 3.885930, 3.897430, 3.908599, 3.919441, 3.929994, 3.940313, 3.950455, 3.960468, 3.970393,
        3.980262, 3.990102, 3.999932, 4.009770, 4.019633, 4.029534, 4.039492, 4.049523, 4.059647, 4.069886,
        4.080265, 4.090813, 4.101561, 4.112545, 4.123806, 4.135387, 4.147338, 4.159712, 4.172570, 4.185976,
        4.200000
    };

    private KimNca2011() {}

    /** Rest volts [V] at charge 0.00, 0.01 … 1.00. */
    public static double[] restVolts() {
        return REST_VOLTS.clone();
    }
}
