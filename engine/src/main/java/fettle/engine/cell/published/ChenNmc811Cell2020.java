package fettle.engine.cell.published;

import fettle.engine.working.Citation;

/**
 * Rest volts of a published NMC811/graphite-SiOx 21700 cell, 5 Ah, 2.5 to 4.2 V, at every per cent of charge from 0 to 100.
 *
 * <p>Computed from the electrode functions and stoichiometries of the paper as parameterised in PyBaMM (V. Sulzer et
 * al., J. Open Res. Softw. 9 (2021) 14), solved so that 0 and 1 fall on the volts named above.
 *
 * @see "C.-H. Chen et al., J. Electrochem. Soc. 167 (2020) 080534"
 */
public final class ChenNmc811Cell2020 {
    public static final Citation CITATION =
            Citation.published("C.-H. Chen et al., J. Electrochem. Soc. 167 (2020) 080534");

    private static final double[] REST_VOLTS = {
        2.500000, 2.711428, 2.862492, 2.971191, 3.050397, 3.109446, 3.155289, 3.193283, 3.227625, 3.261351,
        3.295907, 3.330736, 3.363684, 3.392409, 3.415730, 3.433895, 3.447976, 3.459217, 3.468680, 3.477152,
        3.485189, 3.493171, 3.501360, 3.509929, 3.518984, 3.528563, 3.538641, 3.549128, 3.559880, 3.570716,
        3.581446, 3.591896, 3.601934, 3.611480, 3.620510, 3.629048, 3.637151, 3.644903, 3.652397, 3.659732,
        3.667007, 3.674313, 3.681736, 3.689352, 3.697223, 3.705397, 3.713901, 3.722736, 3.731881, 3.741284,
        3.750874, 3.760557, 3.770235, 3.779811, 3.789202, 3.798348, 3.807216, 3.815810, 3.824171, 3.832381,
        3.840577, 3.848953, 3.857772, 3.867342, 3.877927, 3.889587, 3.902007, 3.914548, 3.926551, 3.937664,
        3.947906, 3.957512, 3.966758, 3.975879, 3.985030, 3.994304, 4.003734, 4.013303, 4.022955, 4.032592,
        4.042080, 4.051251, 4.059913, 4.067864, 4.074914, 4.080912, 4.085780, 4.089550, 4.092387, 4.094606,
        4.096656, 4.099091, 4.102503, 4.107448, 4.114372, 4.123553, 4.135071, 4.148809, 4.164486, 4.181703,
        4.200000
    };

    private ChenNmc811Cell2020() {}

    /** Rest volts [V] at charge 0.00, 0.01 … 1.00. */
    public static double[] restVolts() {
        return REST_VOLTS.clone();
    }
}
