package fettle.engine.cell.published;

import fettle.engine.working.Citation;

/**
 * Rest volts of a published LiFePO4/graphite cell, 2.3 Ah, 2.0 to 3.6 V, at every per cent of charge from 0 to 100.
 *
 * <p>Computed from the electrode functions and stoichiometries of the paper as parameterised in PyBaMM (V. Sulzer et
 * al., J. Open Res. Softw. 9 (2021) 14), solved so that 0 and 1 fall on the volts named above.
 *
 * @see "E. Prada et al., J. Electrochem. Soc. 160 (2013) A616"
 */
public final class PradaLfp2013 {
    public static final Citation CITATION = Citation.published("E. Prada et al., J. Electrochem. Soc. 160 (2013) A616");

    private static final double[] REST_VOLTS = {
        2.000000, 2.265470, 2.460021, 2.602760, 2.707735, 2.785319, 2.843246, 2.887373, 2.922251, 2.951517,
        2.978092, 3.004143, 3.030822, 3.057994, 3.084331, 3.108029, 3.127731, 3.143032, 3.154356, 3.162544,
        3.168489, 3.172959, 3.176543, 3.179671, 3.182651, 3.185703, 3.188982, 3.192593, 3.196598, 3.201015,
        3.205821, 3.210951, 3.216305, 3.221752, 3.227151, 3.232364, 3.237269, 3.241776, 3.245828, 3.249400,
        3.252499, 3.255149, 3.257391, 3.259272, 3.260841, 3.262144, 3.263226, 3.264125, 3.264874, 3.265501,
        3.266030, 3.266480, 3.266867, 3.267203, 3.267500, 3.267765, 3.268005, 3.268226, 3.268432, 3.268630,
        3.268822, 3.269013, 3.269211, 3.269424, 3.269666, 3.269957, 3.270328, 3.270829, 3.271534, 3.272551,
        3.274028, 3.276146, 3.279080, 3.282913, 3.287534, 3.292575, 3.297501, 3.301826, 3.305286, 3.307863,
        3.309691, 3.310954, 3.311821, 3.312425, 3.312857, 3.313180, 3.313435, 3.313647, 3.313833, 3.314003,
        3.314167, 3.314333, 3.314523, 3.314788, 3.315272, 3.316387, 3.319306, 3.327379, 3.350173, 3.415021,
        3.600000
    };

    private PradaLfp2013() {}

    /** Rest volts [V] at charge 0.00, 0.01 … 1.00. */
    public static double[] restVolts() {
        return REST_VOLTS.clone();
    }
}
