package fettle.engine.cell.published;

import fettle.engine.working.Citation;

/**
 * Rest volts of a published LCO/graphite pouch cell, 2.28 Ah, 3.0 to 4.2 V, at every per cent of charge from 0 to 100.
 *
 * <p>Computed from the electrode functions and stoichiometries of the paper as parameterised in PyBaMM (V. Sulzer et
 * al., J. Open Res. Softw. 9 (2021) 14), solved so that 0 and 1 fall on the volts named above.
 *
 * @see "W. Ai et al., J. Electrochem. Soc. 167 (2020) 013512"
 */
public final class AiLcoPouch2020 {
    public static final Citation CITATION = Citation.published("W. Ai et al., J. Electrochem. Soc. 167 (2020) 013512");

    private static final double[] REST_VOLTS = {
        3.000000, 3.219176, 3.338764, 3.423935, 3.489299, 3.542056, 3.582505, 3.609452, 3.625013, 3.633728,
        3.639560, 3.643757, 3.647563, 3.651809, 3.657224, 3.665354, 3.673268, 3.679455, 3.684724, 3.689978,
        3.695383, 3.700672, 3.705492, 3.709750, 3.713546, 3.716756, 3.719844, 3.722977, 3.726291, 3.729765,
        3.733089, 3.736232, 3.739245, 3.742228, 3.745133, 3.748128, 3.750990, 3.753905, 3.756691, 3.759295,
        3.762193, 3.764855, 3.767610, 3.770603, 3.773363, 3.776298, 3.779043, 3.782335, 3.785612, 3.788931,
        3.792508, 3.796038, 3.799908, 3.803920, 3.808006, 3.812162, 3.816698, 3.821221, 3.826175, 3.831104,
        3.836461, 3.842025, 3.847834, 3.854005, 3.860722, 3.867502, 3.875152, 3.883005, 3.891269, 3.900075,
        3.908890, 3.917691, 3.926474, 3.935146, 3.943569, 3.951948, 3.960079, 3.968519, 3.976843, 3.985459,
        3.994483, 4.003367, 4.012542, 4.022035, 4.031476, 4.040859, 4.050065, 4.059253, 4.068471, 4.078038,
        4.087947, 4.097851, 4.107847, 4.117975, 4.128071, 4.138362, 4.148785, 4.159356, 4.170022, 4.183609,
        4.200000
    };

    private AiLcoPouch2020() {}

    /** Rest volts [V] at charge 0.00, 0.01 … 1.00. */
    public static double[] restVolts() {
        return REST_VOLTS.clone();
    }
}
