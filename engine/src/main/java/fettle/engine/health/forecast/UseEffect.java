package fettle.engine.health.forecast;

import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import java.util.Arrays;
import java.util.List;

/**
 * How a change of use changes wear, as factors.
 *
 * <p>At rest: the ratio of a year's loss under both uses, each model of {@link ShelfFade} for itself; geometric mean, its ± the scatter
 * between the models. In use: depth to the power 0.5 ± 0.3 for the same charge turned over, from memory; heat in use is left out.
 *
 * @param rest on fade by time
 * @param cycling on fade by full cycles
 */
public record UseEffect(Estimate rest, Estimate cycling) {
    /** No change. */
    public static final UseEffect NONE = new UseEffect(new Estimate(1, 0, List.of()), new Estimate(1, 0, List.of()));

    private static final double YEAR_DAYS = 365;
    private static final double FULL_VOLTS = 4.2;
    private static final double STORAGE_CHARGE = 0.5;
    private static final double STORAGE_VOLTS = 3.85;
    private static final double DEPTH_POWER = 0.5; // from memory
    private static final double DEPTH_POWER_DEVIATION = 0.3; // from memory

    /** From one use to another. */
    public static UseEffect between(Use now, Use then) {
        double[] logs = Arrays.stream(ShelfFade.values())
                .mapToDouble(model -> Math.log(yearLoss(model, then) / yearLoss(model, now)))
                .toArray();
        double mean = Arrays.stream(logs).average().orElseThrow();
        double squares =
                Arrays.stream(logs).map(log -> (log - mean) * (log - mean)).sum();
        double rest = Math.exp(mean);
        double deeper = Math.log(then.depthFraction() / now.depthFraction());
        double cycling = Math.exp(DEPTH_POWER * deeper);
        return new UseEffect(
                estimate(rest, rest * Math.sqrt(squares / (logs.length - 1)), "published models differ"),
                estimate(cycling, cycling * DEPTH_POWER_DEVIATION * Math.abs(deeper), "wear by depth, from memory"));
    }

    private static double yearLoss(ShelfFade model, Use use) {
        double full = model.lossShare(YEAR_DAYS, use.keptKelvins(), 1, FULL_VOLTS);
        double stored = model.lossShare(YEAR_DAYS, use.keptKelvins(), STORAGE_CHARGE, STORAGE_VOLTS);
        return use.fullShare() * full + (1 - use.fullShare()) * stored;
    }

    private static Estimate estimate(double value, double deviation, String cause) {
        return new Estimate(value, deviation, deviation > 0 ? List.of(new Driver(cause, deviation)) : List.of());
    }
}
