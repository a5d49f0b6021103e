package fettle.engine.cell.published;

import fettle.engine.working.Citation;

/**
 * Rest volts of a published NMC/graphite cell, 5 Ah, 2.8 to 4.2 V, at every per cent of charge from 0 to 100.
 *
 * <p>Computed from the electrode functions and stoichiometries of the paper as parameterised in PyBaMM (V. Sulzer et
 * al., J. Open Res. Softw. 9 (2021) 14), solved so that 0 and 1 fall on the volts named above.
 *
 * @see "P. Mohtat et al., J. Electrochem. Soc. 167 (2020) 110561"
 */
public final class MohtatNmc2020 {
    public static final Citation CITATION =
            Citation.published("P. Mohtat et al., J. Electrochem. Soc. 167 (2020) 110561");

    private static final double[] REST_VOLTS = {
        2.800000, 3.114228, 3.285153, 3.379133, 3.431734, 3.462028, 3.480242, 3.491870, 3.499867, 3.505837,
        3.510675, 3.514943, 3.519147, 3.524015, 3.530633, 3.539546, 3.549249, 3.558305, 3.567527, 3.576897,
        3.584696, 3.591085, 3.598331, 3.607203, 3.614828, 3.620204, 3.624645, 3.628773, 3.632511, 3.635824,
        3.638857, 3.641773, 3.644675, 3.647622, 3.650644, 3.653757, 3.656971, 3.660296, 3.663735, 3.667296,
        3.670981, 3.674797, 3.678745, 3.682830, 3.687055, 3.691423, 3.695936, 3.700597, 3.705409, 3.710375,
        3.715500, 3.720795, 3.726279, 3.731997, 3.738047, 3.744636, 3.752163, 3.761233, 3.772285, 3.784710,
        3.796780, 3.807276, 3.816285, 3.824420, 3.832182, 3.839852, 3.847566, 3.855387, 3.863341, 3.871439,
        3.879687, 3.888087, 3.896639, 3.905342, 3.914198, 3.923205, 3.932364, 3.941674, 3.951136, 3.960749,
        3.970514, 3.980431, 3.990502, 4.000726, 4.011105, 4.021640, 4.032332, 4.043182, 4.054194, 4.065368,
        4.076708, 4.088216, 4.099895, 4.111748, 4.123780, 4.135995, 4.148397, 4.160992, 4.173786, 4.186786,
        4.200000
    };

    private MohtatNmc2020() {}

    /** Rest volts [V] at charge 0.00, 0.01 … 1.00. */
    public static double[] restVolts() {
        return REST_VOLTS.clone();
    }
}
