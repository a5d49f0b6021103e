package fettle.engine.health.capacity;

import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
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
    private static final Citation TOTAL_LEAST_SQUARES =
            Citation.published("weighted total least squares: G. L. Plett, J. Power Sources 196 (2011) 2319-2331");

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

    /** How it was reached. */
    public Working working() {
        return Working.of(new Step(
                "capacity from noted charges and from traces",
                "Q least in the sum of (put-back − Q · change of rest charge)² over both variances; then a mean with the label",
                List.of(
                        "charges = " + influences.size() + ", outliers = "
                                + outliers().size(),
                        "95 % interval = " + print(lowCoulombs) + " to " + print(highCoulombs),
                        "label = " + print(ratedCoulombs),
                        "published recursion with fading memory, label left out = " + print(recursionCoulombs)),
                TradeUnit.MILLIAMPERE_HOUR.print(capacity, 0),
                TOTAL_LEAST_SQUARES));
    }

    private static String print(double coulombs) {
        return TradeUnit.MILLIAMPERE_HOUR.print(coulombs, 0);
    }

    /** Pairs that do not fit the others. They still count, with less weight. */
    public List<Influence> outliers() {
        return influences.stream().filter(Influence::outlier).toList();
    }
}
