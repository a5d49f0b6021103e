package fettle.engine.cell.published;

import fettle.engine.working.Citation;

/**
 * Rest volts of a published NMC-type/graphite pouch cell, 7.5 Ah, 2.5 to 4.2 V, at every per cent of charge from 0 to 100.
 *
 * <p>Computed from the electrode functions and stoichiometries of the paper as parameterised in PyBaMM (V. Sulzer et
 * al., J. Open Res. Softw. 9 (2021) 14), solved so that 0 and 1 fall on the volts named above.
 *
 * @see "M. Ecker et al., J. Electrochem. Soc. 162 (2015) A1836"
 */
public final class EckerPouch2015 {
    public static final Citation CITATION =
            Citation.published("M. Ecker et al., J. Electrochem. Soc. 162 (2015) A1836");

    private static final double[] REST_VOLTS = {
        2.500000, 2.879668, 3.034361, 3.145371, 3.229448, 3.293798, 3.343524, 3.382402, 3.413233, 3.438103,
        3.458570, 3.475808, 3.490712, 3.503975, 3.516146, 3.527676, 3.538944, 3.550273, 3.561933, 3.574132,
        3.586986, 3.600496, 3.614519, 3.628781, 3.642919, 3.656547, 3.669336, 3.681061, 3.691618, 3.701019,
        3.709373, 3.716863, 3.723728, 3.730230, 3.736603, 3.742991, 3.749368, 3.755529, 3.761171, 3.766035,
        3.770015, 3.773161, 3.775618, 3.777563, 3.779159, 3.780542, 3.781817, 3.783068, 3.784358, 3.785738,
        3.787250, 3.788930, 3.790807, 3.792909, 3.795257, 3.797871, 3.800769, 3.803966, 3.807472, 3.811299,
        3.815455, 3.819950, 3.824795, 3.830009, 3.835619, 3.841673, 3.848243, 3.855439, 3.863405, 3.872302,
        3.882251, 3.893228, 3.904979, 3.917026, 3.928832, 3.940010, 3.950426, 3.960148, 3.969343, 3.978190,
        3.986843, 3.995421, 4.004011, 4.012678, 4.021475, 4.030440, 4.039610, 4.049015, 4.058682, 4.068635,
        4.078896, 4.089483, 4.100409, 4.111683, 4.123311, 4.135292, 4.147616, 4.160273, 4.173241, 4.186494,
        4.200000
    };

    private EckerPouch2015() {}

    /** Rest volts [V] at charge 0.00, 0.01 … 1.00. */
    public static double[] restVolts() {
        return REST_VOLTS.clone();
    }
}
