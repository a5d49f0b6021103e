package fettle.engine.pack;

import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import java.util.List;

/**
 * What a pack holds from empty to full today, beside what its label says.
 *
 * @param coulombs the best estimate [C], its mean cell
 * @param labelCoulombs what the label says [C]
 * @param evidence what it was told from, in words; empty while there is nothing but the label
 */
public record PresentCapacity(Estimate coulombs, double labelCoulombs, String evidence) {
    /** Doubt about a label's capacity until the pack's own is known. From memory. */
    private static final double LABEL_SHARE_DEVIATION = 0.05;

    /** The label, where nothing was measured. */
    public static PresentCapacity ofLabel(Pack pack) {
        double label = pack.ratedCapacityCoulombs();
        double deviation = LABEL_SHARE_DEVIATION * label;
        return new PresentCapacity(
                new Estimate(label, deviation, List.of(new Driver("label capacity not yet measured", deviation))),
                label,
                "");
    }

    public boolean measured() {
        return !evidence.isEmpty();
    }

    /** What plans and currents go by [C]: the estimate, and never more than the label. */
    public double plannedCoulombs() {
        return Math.min(labelCoulombs, coulombs.value());
    }

    /** The same as a share of the label, at most 1. */
    public double plannedShare() {
        return plannedCoulombs() / labelCoulombs;
    }
}
