package fettle.engine.health.capacity;

import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Capacity from all its evidence.
 *
 * <p>Weighted total least squares with the label as a loose prior. A pair's weight is γ to the power of the pairs since (fading
 * memory) times Huber's 2.5/|d| where it lies d > 2.5 of its deviations away, so that a slip counts little and is never
 * dropped. Where pairs scatter more than they should, every random ± grows by √(χ²/freedom). Errors common to all pairs
 * (curve, counter) are added after that: more pairs do not shrink them.
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
        List<Weighted> weighted = weigh(pairs, label);
        TotalLeastSquares fit = TotalLeastSquares.fit(weighted, label);
        double scatter = scatter(weighted, fit.capacityCoulombs());
        double grown = Math.sqrt(Math.max(1, scatter));
        double common = common(weighted, fit.capacityCoulombs(), label);
        double random = fit.standardDeviation() * grown;
        double below = fit.capacityCoulombs() - fit.end(TotalLeastSquares.Side.BELOW, TWO_SIDED_95 * grown);
        double above = fit.end(TotalLeastSquares.Side.ABOVE, TWO_SIDED_95 * grown) - fit.capacityCoulombs();
        return new CapacityReport(
                Estimate.ofIndependent(
                        fit.capacityCoulombs(),
                        List.of(
                                new Driver("scatter of " + pairs.size() + " charges and the label", random),
                                new Driver("curve and counter, the same every time", common))),
                fit.capacityCoulombs() - Math.hypot(below, TWO_SIDED_95 * common),
                fit.capacityCoulombs() + Math.hypot(above, TWO_SIDED_95 * common),
                label.coulombs(),
                scatter,
                recursion(pairs, label),
                influences(weighted, fit, label));
    }

    /** As above, without a label: needs at least one pair. */
    public static Estimate ofPairsAlone(List<CapacityPair> pairs) {
        TotalLeastSquares fit = TotalLeastSquares.fit(weigh(pairs, null), null);
        return new Estimate(fit.capacityCoulombs(), fit.standardDeviation(), List.of());
    }

    private static List<Weighted> weigh(List<CapacityPair> pairs, @Nullable CapacityPrior label) {
        double[] memory = IntStream.range(0, pairs.size())
                .mapToDouble(i -> Math.pow(MEMORY, pairs.size() - 1 - i))
                .toArray();
        double[] ratios = pairs.stream()
                .mapToDouble(pair -> pair.coulombs() / pair.changeFraction())
                .sorted()
                .toArray();
        double capacity = ratios.length == 0 ? 0 : ratios[ratios.length / 2];
        List<Weighted> weighted = List.of();
        for (int round = 0; round < REWEIGHTINGS && !pairs.isEmpty(); round++) {
            List<Weighted> next = new ArrayList<>();
            for (int i = 0; i < pairs.size(); i++) {
                double away = Math.abs(new Weighted(pairs.get(i), 1).standardised(capacity));
                next.add(new Weighted(
                        pairs.get(i), memory[i] * Math.min(1, OUTLIER_DEVIATIONS / Math.max(away, Double.MIN_NORMAL))));
            }
            weighted = next;
            capacity = TotalLeastSquares.fit(weighted, label).capacityCoulombs();
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
    private static double common(List<Weighted> weighted, double capacity, CapacityPrior label) {
        double all = 1 / label.variance();
        double curve = 0;
        double told = 0;
        for (Weighted each : weighted) {
            double information = information(each, capacity);
            all += information;
            told += information;
            curve += information
                    * each.pair().curveDeviation()
                    / Math.abs(each.pair().changeFraction());
        }
        return capacity * Math.hypot(curve / all, GAIN_DEVIATION * told / all);
    }

    private static double information(Weighted each, double capacity) {
        double change = each.pair().changeFraction();
        return each.weight() * change * change / each.variance(capacity);
    }

    private static List<Influence> influences(List<Weighted> weighted, TotalLeastSquares fit, CapacityPrior label) {
        double capacity = fit.capacityCoulombs();
        double all = 1 / label.variance()
                + weighted.stream()
                        .mapToDouble(each -> information(each, capacity))
                        .sum();
        List<Influence> influences = new ArrayList<>();
        for (int i = 0; i < weighted.size(); i++) {
            List<Weighted> others = new ArrayList<>(weighted);
            Weighted each = others.remove(i);
            double without = TotalLeastSquares.fit(others, label).capacityCoulombs();
            double away = each.standardised(capacity);
            influences.add(new Influence(
                    each.pair(),
                    information(each, capacity) / all,
                    capacity - without,
                    away,
                    Math.abs(away) > OUTLIER_DEVIATIONS));
        }
        return influences;
    }

    private static double recursion(List<CapacityPair> pairs, CapacityPrior label) {
        if (pairs.isEmpty()) {
            return label.coulombs();
        }
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
