package fettle.engine.cell;

import fettle.engine.cell.published.AiLcoPouch2020;
import fettle.engine.cell.published.ChenNmc811Cell2020;
import fettle.engine.cell.published.EckerPouch2015;
import fettle.engine.cell.published.KimNca2011;
import fettle.engine.cell.published.MohtatNmc2020;
import fettle.engine.cell.published.OReganNmc811Cell2022;
import fettle.engine.cell.published.PradaLfp2013;
import fettle.engine.working.Citation;
import fettle.engine.working.CitationStatus;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;

/**
 * The rest-voltage curve Fettle assumes for a chemistry until a pack has shown its own.
 *
 * <p>Where several cells of a chemistry are published, the curve is their mean and the band their standard deviation,
 * never below the error of the tables themselves.
 */
public final class DefaultCurves {
    /** Least band [V]: one part in a thousand of a cell, about the difference between two samples. From memory. */
    private static final double LEAST_BAND_VOLTS = 0.005;

    /** Charge of a LiHV cell at 4.20 V: 2.466 / 2.691 Ah, the Ai set extended to 4.35 V (an indication). */
    private static final double LIHV_CHARGE_AT_4V20 = 2.466 / 2.691;

    private static final double LIHV_LIMIT_VOLTS = 4.35;
    private static final double LIHV_BAND_VOLTS = 0.025;
    private static final double LIFEPO4_BAND_VOLTS = 0.025;
    private static final double NIMH_BAND_VOLTS = 0.03;
    private static final double LEAD_ACID_BAND_VOLTS = 0.015;

    private static final Map<Chemistry, RestCurve> CURVES = new EnumMap<>(Map.of(
            Chemistry.LIPO,
            meanOf(
                    "mean of three published pouch and NMC cells: Ai 2020, Ecker 2015, Mohtat 2020",
                    AiLcoPouch2020.restVolts(),
                    EckerPouch2015.restVolts(),
                    MohtatNmc2020.restVolts()),
            Chemistry.LIHV,
            lihv(),
            Chemistry.LIFEPO4,
            evenly(PradaLfp2013.restVolts(), LIFEPO4_BAND_VOLTS, PradaLfp2013.CITATION),
            Chemistry.LI_ION,
            meanOf(
                    "mean of three published cylindrical-type cells: Chen 2020, O'Regan 2022, Kim 2011",
                    ChenNmc811Cell2020.restVolts(),
                    OReganNmc811Cell2022.restVolts(),
                    KimNca2011.restVolts()),
            Chemistry.NIMH,
            evenly(
                    new double[] {1.00, 1.18, 1.22, 1.245, 1.26, 1.27, 1.28, 1.29, 1.305, 1.33, 1.41},
                    NIMH_BAND_VOLTS,
                    new Citation("NiMH rest volts, no published table found", CitationStatus.FROM_MEMORY)),
            Chemistry.LEAD_ACID,
            evenly(
                    new double[] {11.89 / 6, 12.06 / 6, 12.24 / 6, 12.45 / 6, 12.65 / 6},
                    LEAD_ACID_BAND_VOLTS,
                    Citation.published("open-circuit volts of a 12 V lead-acid battery at 26.7 °C, citing BCI"))));

    private DefaultCurves() {}

    /** The default curve of a chemistry, volts per cell. */
    public static RestCurve of(Chemistry chemistry) {
        return CURVES.get(chemistry);
    }

    private static RestCurve meanOf(String text, double[]... tables) {
        int rows = tables[0].length;
        double[] mean = new double[rows];
        double[] band = new double[rows];
        for (int row = 0; row < rows; row++) {
            for (double[] table : tables) {
                mean[row] += table[row] / tables.length;
            }
            double squares = 0;
            for (double[] table : tables) {
                squares += (table[row] - mean[row]) * (table[row] - mean[row]);
            }
            band[row] = Math.max(LEAST_BAND_VOLTS, Math.sqrt(squares / (tables.length - 1)));
        }
        return RestCurve.of(evenCharge(rows), mean, band, Citation.published(text));
    }

    private static RestCurve evenly(double[] volts, double bandVolts, Citation citation) {
        double[] band = new double[volts.length];
        Arrays.fill(band, bandVolts);
        return RestCurve.of(evenCharge(volts.length), volts, band, citation);
    }

    private static RestCurve lihv() {
        double[] base = AiLcoPouch2020.restVolts();
        int rows = base.length + 1;
        double[] charge = new double[rows];
        double[] volts = new double[rows];
        double[] band = new double[rows];
        for (int row = 0; row < base.length; row++) {
            charge[row] = LIHV_CHARGE_AT_4V20 * row / (base.length - 1);
            volts[row] = base[row];
            band[row] = LIHV_BAND_VOLTS;
        }
        charge[rows - 1] = 1;
        volts[rows - 1] = LIHV_LIMIT_VOLTS;
        band[rows - 1] = LIHV_BAND_VOLTS;
        return RestCurve.of(
                charge,
                volts,
                band,
                new Citation(
                        "Ai 2020 (LCO pouch) to 4.20 V, extended to 4.35 V; no published table",
                        CitationStatus.FROM_MEMORY));
    }

    private static double[] evenCharge(int rows) {
        double[] charge = new double[rows];
        for (int row = 0; row < rows; row++) {
            charge[row] = row / (double) (rows - 1);
        }
        return charge;
    }
}
