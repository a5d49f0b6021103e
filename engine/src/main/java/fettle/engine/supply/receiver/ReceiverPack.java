package fettle.engine.supply.receiver;

import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;
import java.util.List;

/**
 * How long a receiver pack lasts.
 *
 * <p>Formula: (capacity · (1 − reserve)) / current, with the current of cruise and a share of the time in hard
 * manoeuvres; the ± is that of the capacity and of what is flown.
 *
 * @param capacity what the pack gives [C], measured if possible, with ±
 * @param reserveFraction share kept back, 0 … 0.9
 * @param hardFraction share of the time in hard manoeuvres, 0 … 1
 */
public record ReceiverPack(Estimate capacity, double reserveFraction, double hardFraction) {
    /** Uncertainty of what is flown, as a share of the current; Fettle's choice. */
    private static final double FLOWN = 0.25;

    public ReceiverPack {
        new Faults()
                .range(
                        "capacity",
                        "capacity",
                        capacity.value(),
                        TradeUnit.MILLIAMPERE_HOUR,
                        10,
                        100_000,
                        "See its label.")
                .range("reserve", "reserve", reserveFraction, TradeUnit.PERCENT, 0, 90, "A third or more is usual.")
                .range("hard", "share of hard manoeuvres", hardFraction, TradeUnit.PERCENT, 0, 100, "Give a share.")
                .refuse();
    }

    /** Time to the reserve [s], with ±. */
    public Estimate seconds(ReceiverSupply supply) {
        double amps =
                (1 - hardFraction) * supply.amps(Scenario.CRUISE) + hardFraction * supply.amps(Scenario.HARD_MANOEUVRE);
        double seconds = capacity.value() * (1 - reserveFraction) / amps;
        return Estimate.ofIndependent(
                seconds,
                List.of(
                        new Driver("what is flown", seconds * FLOWN),
                        new Driver("capacity", seconds * capacity.standardDeviation() / capacity.value())));
    }
}
