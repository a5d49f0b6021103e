package fettle.engine.health.capacity;

import fettle.engine.units.Estimate;
import java.util.List;

/**
 * What the evidence says of capacity.
 *
 * @param capacity charge from empty to full [C]
 * @param lowCoulombs lower end of the 95 % interval [C]
 * @param highCoulombs its upper end [C]
 * @param ratedCoulombs what the label says [C]
 * @param scatter χ² of the pairs over their degrees of freedom; about 1 if their errors were judged well
 * @param recursionCoulombs where the published recursion stands after the same pairs [C]
 * @param influences the pairs, oldest first, and what each adds
 */
public record CapacityReport(
        Estimate capacity,
        double lowCoulombs,
        double highCoulombs,
        double ratedCoulombs,
        double scatter,
        double recursionCoulombs,
        List<Influence> influences) {
    public CapacityReport {
        influences = List.copyOf(influences);
    }

    /** Measured capacity as a share of the label's. */
    public Estimate shareOfLabel() {
        return capacity.times(1 / ratedCoulombs);
    }

    /** True where the whole 95 % interval lies below a share of the label. */
    public boolean surelyBelow(double share) {
        return highCoulombs < share * ratedCoulombs;
    }

    /** Pairs that do not fit the others. They still count, with less weight. */
    public List<Influence> outliers() {
        return influences.stream().filter(Influence::outlier).toList();
    }
}
