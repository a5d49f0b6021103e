package fettle.engine.pack.model;

import fettle.engine.cell.DefaultCurves;
import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * Carries what is uncertain about a pack into an answer, to first order: the answer is worked out again with each figure
 * one standard deviation away, and the differences add as squares.
 */
public final class Spreading {
    private static final double FULL = 1;
    private static final double HALF = 0.5;

    /** A difference below this share of the figure is rounding, not doubt. */
    private static final double ROUNDING = 1e-7;

    private Spreading() {}

    /**
     * The figures of an answer with their ±.
     *
     * @param pack the pack as it is known
     * @param answer works out the figures; the same number of them every time
     * @return an estimate per figure
     */
    public static List<Estimate> of(PackModel pack, Function<PackModel, double[]> answer) {
        return around(answer.apply(pack), pack, answer);
    }

    /**
     * The same where the figures of the pack as it is known are there already.
     *
     * @param best those figures
     */
    public static List<Estimate> around(double[] best, PackModel pack, Function<PackModel, double[]> answer) {
        Map<String, double[]> moved = new LinkedHashMap<>();
        variants(pack).forEach((cause, variant) -> moved.put(cause, answer.apply(variant)));
        return estimates(best, moved);
    }

    /** The same for an answer about several packs, whose figures are off independently of each other. */
    public static List<Estimate> ofAll(List<PackModel> packs, Function<List<PackModel>, double[]> answer) {
        double[] best = answer.apply(packs);
        Map<String, double[]> moved = new LinkedHashMap<>();
        for (int which = 0; which < packs.size(); which++) {
            List<PackModel> varied = new ArrayList<>(packs);
            int at = which;
            variants(packs.get(which)).forEach((cause, variant) -> {
                varied.set(at, variant);
                moved.put(cause + " of " + variant.name(), answer.apply(varied));
            });
        }
        return estimates(best, moved);
    }

    private static List<Estimate> estimates(double[] best, Map<String, double[]> moved) {
        return IntStream.range(0, best.length)
                .mapToObj(figure -> estimate(best[figure], figure, moved))
                .toList();
    }

    private static Estimate estimate(double best, int figure, Map<String, double[]> moved) {
        List<Driver> drivers = new ArrayList<>();
        moved.forEach((cause, figures) -> {
            double off = Math.abs(figures[figure] - best);
            if (off > ROUNDING * Math.abs(best)) {
                drivers.add(new Driver(cause, off));
            }
        });
        return Estimate.ofIndependent(best, drivers);
    }

    private static Map<String, PackModel> variants(PackModel pack) {
        Doubt doubt = pack.doubt();
        Map<String, PackModel> variants = new LinkedHashMap<>();
        if (doubt.charge() > 0) {
            variants.put("charge at the start", shifted(pack, doubt.charge()));
        }
        if (doubt.capacityShare() > 0) {
            variants.put("capacity", pack.scaled(1 - doubt.capacityShare(), 1));
        }
        if (doubt.resistanceShare() > 0) {
            variants.put("resistance", pack.scaled(1, 1 + doubt.resistanceShare()));
        }
        if (doubt.kelvins() > 0) {
            variants.put(
                    "temperature", pack.at(pack.kelvins() - doubt.kelvins(), pack.ambientKelvins() - doubt.kelvins()));
        }
        if (doubt.curveBands() > 0) {
            double band =
                    doubt.curveBands() * DefaultCurves.of(pack.chemistry()).bandVolts(HALF);
            variants.put("rest-voltage curve", pack.withRestShift(pack.restShiftVolts() - band));
        }
        return variants;
    }

    /** All cells moved together; downward, or upward where a cell would fall below empty. */
    private static PackModel shifted(PackModel pack, double by) {
        boolean down = pack.cells().stream().allMatch(cell -> cell.chargeFraction() >= by);
        return pack.withCells(pack.cells().stream()
                .map(cell -> cell.withCharge(Math.min(FULL, cell.chargeFraction() + (down ? -by : by))))
                .toList());
    }
}
