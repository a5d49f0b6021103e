package fettle.engine.cell.published;

import fettle.engine.working.Citation;

/**
 * Rest volts of a published NMC811/graphite-SiOx 21700 cell, 5 Ah, 2.5 to 4.2 V, at every per cent of charge from 0 to 100.
 *
 * <p>Computed from the electrode functions and stoichiometries of the paper as parameterised in PyBaMM (V. Sulzer et
 * al., J. Open Res. Softw. 9 (2021) 14), solved so that 0 and 1 fall on the volts named above.
 *
 * @see "K. O'Regan et al., Electrochim. Acta 425 (2022) 140700"
 */
public final class OReganNmc811Cell2022 {
    public static final Citation CITATION =
            Citation.published("K. O'Regan et al., Electrochim. Acta 425 (2022) 140700");

    private static final double[] REST_VOLTS = {
        2.500000, 2.699788, 2.839307, 2.937842, 3.008912, 3.062223, 3.105013, 3.142837, 3.179695, 3.217487,
        3.255422, 3.290695, 3.320580, 3.344122, 3.362091, 3.376001, 3.387320, 3.397180, 3.406365, 3.415401,
        3.424638, 3.434302, 3.444522, 3.455339, 3.466704, 3.478484, 3.490473, 3.502430, 3.514112, 3.525317,
        3.535905, 3.545812, 3.555034, 3.563616, 3.571633, 3.579170, 3.586316, 3.593153, 3.599753, 3.606179,
        3.612488, 3.618727, 3.624941, 3.631169, 3.637453, 3.643834, 3.650359, 3.657077, 3.664046, 3.671329,
        3.678996, 3.687121, 3.695782, 3.705058, 3.715030, 3.725785, 3.737430, 3.750111, 3.763997, 3.779190,
        3.795516, 3.812323, 3.828604, 3.843490, 3.856637, 3.868184, 3.878491, 3.887928, 3.896800, 3.905338,
        3.913716, 3.922070, 3.930507, 3.939118, 3.947977, 3.957147, 3.966676, 3.976596, 3.986917, 3.997618,
        4.008642, 4.019885, 4.031187, 4.042330, 4.053036, 4.062990, 4.071863, 4.079372, 4.085343, 4.089792,
        4.092984, 4.095467, 4.098033, 4.101619, 4.107155, 4.115391, 4.126763, 4.141332, 4.158801, 4.178598,
        4.200000
    };

    private OReganNmc811Cell2022() {}

    /** Rest volts [V] at charge 0.00, 0.01 … 1.00. */
    public static double[] restVolts() {
        return REST_VOLTS.clone();
    }
}
