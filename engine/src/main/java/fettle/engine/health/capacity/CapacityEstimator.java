package fettle.engine.health.capacity;

import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Capacity from all its evidence.
 *
 * <p>Weighted total least squares over the pairs, then a mean with the label, each by its own variance. A pair's weight is γ to the power of the pairs since (fading
 * memory) times Huber's 2.5/|d| where it lies d > 2.5 of its deviations away, so that a slip counts little and is never
 * dropped. Where pairs scatter more than they should, every random ± grows by √(χ²/freedom). Errors common to all pairs
 * (curve, counter) are added after that and before the label: more pairs do not shrink them.
 */
public final class CapacityEstimator {
    /** Beyond this many of its own deviations a pair is called an outlier. */
    public static final double OUTLIER_DEVIATIONS = 2.5;

    /** Memory from pair to pair: evidence fifty pairs old counts a third. Plett uses 0.95 to 1. */
    private static final double MEMORY = 0.98;

    /** A charger's or logger's counter is off by this share, the same way every time. From memory. */
    private static final double GAIN_DEVIATION = 0.02;

    private static final double TWO_SIDED_95 = 1.959964; // of a normal law
    private static final int REWEIGHTINGS = 12;

    private CapacityEstimator() {}

    /**
     * Fuses the evidence.
     *
     * @param pairs oldest first; may be empty, then the label is all there is
     * @param label what is believed before any evidence
     */
    public static CapacityReport of(List<CapacityPair> pairs, CapacityPrior label) {
        if (pairs.isEmpty()) {
            double half = TWO_SIDED_95 * label.deviation();
            return new CapacityReport(
                    new Estimate(
                            label.coulombs(),
                            label.deviation(),
                            List.of(new Driver("label, nothing measured", label.deviation()))),
                    label.coulombs() - half,
                    label.coulombs() + half,
                    label.coulombs(),
                    1,
                    label.coulombs(),
                    List.of());
        }
        List<Weighted> weighted = weigh(pairs);
        TotalLeastSquares fit = TotalLeastSquares.fit(weighted);
        return joined(weighted, fit, label, recursion(pairs));
    }

    private static CapacityReport joined(
            List<Weighted> weighted, TotalLeastSquares fit, CapacityPrior label, double recursion) {
        double measured = fit.capacityCoulombs();
        double scatter = scatter(weighted, measured);
        double grown = Math.sqrt(Math.max(1, scatter));
        double random = fit.standardDeviation() * grown;
        double common = common(weighted, measured);
        double variance = random * random + common * common;
        double told = label.variance() / (label.variance() + variance); // the evidence's share against the label
        double shrink = Math.sqrt(told);
        double capacity = told * measured + (1 - told) * label.coulombs();
        double below = measured - fit.end(TotalLeastSquares.Side.BELOW, TWO_SIDED_95 * grown);
        double above = fit.end(TotalLeastSquares.Side.ABOVE, TWO_SIDED_95 * grown) - measured;
        return new CapacityReport(
                Estimate.ofIndependent(
                        capacity,
                        List.of(
                                new Driver("scatter of " + weighted.size() + " charges", shrink * random),
                                new Driver("curve and counter, the same every time", shrink * common))),
                capacity - shrink * Math.hypot(below, TWO_SIDED_95 * common),
                capacity + shrink * Math.hypot(above, TWO_SIDED_95 * common),
                label.coulombs(),
                scatter,
                recursion,
                influences(weighted, fit, told));
    }

    /** As above, without a label: needs at least one pair. */
    public static Estimate ofPairsAlone(List<CapacityPair> pairs) {
        TotalLeastSquares fit = TotalLeastSquares.fit(weigh(pairs));
        return new Estimate(fit.capacityCoulombs(), fit.standardDeviation(), List.of());
    }

    /**
     * Capacity of one cell: the pack's, times what the cell's pairs say over what the pack's pairs say. Curve and counter err
     * alike in both.
     *
     * @param cell pairs of the cell, at least one
     * @param pack pairs of the pack's mean cell, at least one
     * @param report what the pack's pairs came to
     */
    public static Estimate ofCell(List<CapacityPair> cell, List<CapacityPair> pack, CapacityReport report) {
        Estimate alone = ofPairsAlone(cell);
        double ratio = alone.value() / ofPairsAlone(pack).value();
        double value = report.capacity().value() * ratio;
        return Estimate.ofIndependent(
                value,
                List.of(
                        new Driver("scatter of its own charges", value * alone.standardDeviation() / alone.value()),
                        new Driver("capacity of the pack", report.capacity().standardDeviation() * ratio)));
    }

    private static List<Weighted> weigh(List<CapacityPair> pairs) {
        double[] memory = IntStream.range(0, pairs.size())
                .mapToDouble(i -> Math.pow(MEMORY, pairs.size() - 1 - i))
                .toArray();
        double[] ratios = pairs.stream()
                .mapToDouble(pair -> pair.coulombs() / pair.changeFraction())
                .sorted()
                .toArray();
        double capacity = ratios[ratios.length / 2];
        List<Weighted> weighted = List.of();
        for (int round = 0; round < REWEIGHTINGS; round++) {
            List<Weighted> next = new ArrayList<>();
            for (int i = 0; i < pairs.size(); i++) {
                double away = Math.abs(new Weighted(pairs.get(i), 1).standardised(capacity));
                next.add(new Weighted(
                        pairs.get(i), memory[i] * Math.min(1, OUTLIER_DEVIATIONS / Math.max(away, Double.MIN_NORMAL))));
            }
            weighted = next;
            capacity = TotalLeastSquares.fit(weighted).capacityCoulombs();
        }
        return weighted;
    }

    private static double scatter(List<Weighted> weighted, double capacity) {
        double chiSquared = 0;
        double weights = 0;
        for (Weighted each : weighted) {
            chiSquared += each.weight() * each.standardised(capacity) * each.standardised(capacity);
            weights += each.weight();
        }
        return weights > 2 ? chiSquared / (weights - 1) : 1;
    }

    /** Errors that are the same in every pair, as the pairs share the answer [C]. */
    private static double common(List<Weighted> weighted, double capacity) {
        double all = 0;
        double curve = 0;
        for (Weighted each : weighted) {
            double information = information(each, capacity);
            all += information;
            curve += information
                    * each.pair().curveDeviation()
                    / Math.abs(each.pair().changeFraction());
        }
        return capacity * Math.hypot(curve / all, GAIN_DEVIATION);
    }

    private static double information(Weighted each, double capacity) {
        double change = each.pair().changeFraction();
        return each.weight() * change * change / each.variance(capacity);
    }

    private static List<Influence> influences(List<Weighted> weighted, TotalLeastSquares fit, double told) {
        double capacity = fit.capacityCoulombs();
        double all = weighted.stream()
                .mapToDouble(each -> information(each, capacity))
                .sum();
        return weighted.stream()
                .map(each -> new Influence(
                        each.pair(),
                        told * information(each, capacity) / all,
                        told * fit.pull(each),
                        each.standardised(capacity),
                        Math.abs(each.standardised(capacity)) > OUTLIER_DEVIATIONS))
                .toList();
    }

    private static double recursion(List<CapacityPair> pairs) {
        double scale = pairs.stream()
                .mapToDouble(pair -> pair.changeDeviation() / pair.coulombsDeviation())
                .average()
                .orElseThrow();
        CapacityRecursion recursion = CapacityRecursion.starting(scale, MEMORY);
        for (CapacityPair pair : pairs) {
            recursion = recursion.plus(pair);
        }
        return recursion.capacityCoulombs();
    }
}
