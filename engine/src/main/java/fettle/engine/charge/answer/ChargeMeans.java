package fettle.engine.charge.answer;

import fettle.engine.pack.simulation.Balancer;
import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;
import java.util.Optional;

/**
 * What charges a pack.
 *
 * @param amps charge current set [A], &gt; 0
 * @param watts largest power of the port [W]
 * @param sourceWatts largest power its source gives [W]
 * @param efficiency share of the source's power that reaches the pack
 * @param endAmps the taper ends here [A]
 * @param balancer bleeds while it charges, if it balances
 */
public record ChargeMeans(
        double amps, double watts, double sourceWatts, double efficiency, double endAmps, Optional<Balancer> balancer) {
    /** Efficiency of a charger whose own is not known. From memory. */
    public static final double USUAL_EFFICIENCY = 0.85;

    public ChargeMeans {
        Faults faults = new Faults();
        faults.range("amps", "charge current", amps, TradeUnit.AMPERE, 0.01, 200, "Give it in A.");
        faults.range("watts", "port power", watts, TradeUnit.WATT, 0.1, 10_000, "Give it in W.");
        faults.range("source_watts", "source power", sourceWatts, TradeUnit.WATT, 0.1, 100_000, "Give it in W.");
        faults.range("efficiency", "charger efficiency", efficiency, TradeUnit.PERCENT, 30, 100, "Give it in %.");
        faults.range("end_amps", "end current", endAmps, TradeUnit.AMPERE, 0.001, amps, "Below the charge current.");
        faults.refuse();
    }

    /** A charger of ample power that ends at a twentieth of its current. */
    public static ChargeMeans ofAmps(double amps) {
        return new ChargeMeans(amps, 10_000, 100_000, USUAL_EFFICIENCY, amps / 20, Optional.empty());
    }

    /** The same at another current, its taper ending at the same share of it. */
    public ChargeMeans withAmps(double other) {
        return new ChargeMeans(other, watts, sourceWatts, efficiency, endAmps * other / amps, balancer);
    }

    /** The same with another balancer, or none. */
    public ChargeMeans with(Optional<Balancer> other) {
        return new ChargeMeans(amps, watts, sourceWatts, efficiency, endAmps, other);
    }

    /** Power at the pack's terminals [W]: the port's, or what the source leaves after the charger's loss. */
    public double terminalWatts() {
        return Math.min(watts, sourceWatts * efficiency);
    }
}
