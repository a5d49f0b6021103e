package fettle.engine.pack.power;

import fettle.engine.pack.model.Circuits;
import fettle.engine.pack.model.PackModel;
import fettle.engine.pack.model.Spreading;
import fettle.engine.pack.simulation.Demand;
import fettle.engine.pack.simulation.EndKind;
import fettle.engine.pack.simulation.Summary;
import fettle.engine.rule.Limits;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.util.List;

/**
 * The largest constant current a pack carries from full to its reserve with its weakest cell above the under-load minimum
 * and its warmest below the temperature limit.
 *
 * @param amps the current [A]
 * @param cRate the same over the capacity [1/h]
 * @param binding what a larger current would break
 * @param labelAmps the label's current [A]; NaN if not stated
 * @param working the steps
 */
public record SustainableCurrent(Estimate amps, Estimate cRate, String binding, double labelAmps, Working working) {
    private static final double HOUR_SECONDS = 3600;
    private static final double LARGEST_C = 200;
    private static final double CLOSE = 1.002;

    /**
     * Works out the current.
     *
     * @param pack the pack as it is known; its charge is taken as full
     * @param limits the rules that hold for it
     * @param labelAmps the label's continuous current [A]; NaN if not stated
     */
    public static SustainableCurrent of(PackModel pack, Limits limits, double labelAmps) {
        PackModel full = pack.withCharge(1);
        Estimate amps = Spreading.of(full, variant -> new double[] {largest(variant.withCharge(1), limits)})
                .get(0);
        double hours = full.leastCapacityCoulombs() / HOUR_SECONDS;
        Summary beyond = run(full, limits, amps.value() * CLOSE * CLOSE);
        String binding = LoadRun.limit(beyond.lastStep(), limits);
        Estimate cRate = amps.times(1 / hours);
        Step step = new Step(
                "sustainable current",
                "the largest constant current from full to reserve within every limit, found by halving",
                List.of(
                        "least capacity = " + TradeUnit.MILLIAMPERE_HOUR.print(full.leastCapacityCoulombs(), 0),
                        "pack and air at " + TradeUnit.CELSIUS.print(full.ambientKelvins(), 0),
                        "a larger current breaks " + binding),
                TradeUnit.AMPERE.print(amps, 1) + " = " + TradeUnit.C_RATE.print(cRate, 1),
                Circuits.SHAPE);
        return new SustainableCurrent(amps, cRate, binding, labelAmps, Working.of(step));
    }

    private static double largest(PackModel full, Limits limits) {
        double hours = full.leastCapacityCoulombs() / HOUR_SECONDS;
        double low = 0;
        double high = LARGEST_C * hours;
        while (high > CLOSE * low && high > LARGEST_C * hours * 1e-4) {
            double middle = low == 0 ? high / 4 : Math.sqrt(low * high);
            if (reachesReserve(full, limits, middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static boolean reachesReserve(PackModel full, Limits limits, double amps) {
        return run(full, limits, amps).lastStep().endedBy().kind() == EndKind.CELL_CHARGE_AT_MOST;
    }

    private static Summary run(PackModel full, Limits limits, double amps) {
        return LoadRun.untilLimit(full, limits, new Demand.Current(amps), amps);
    }
}
