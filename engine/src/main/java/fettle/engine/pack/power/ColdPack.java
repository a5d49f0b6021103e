package fettle.engine.pack.power;

import fettle.engine.pack.model.Circuits;
import fettle.engine.pack.model.PackModel;
import fettle.engine.pack.simulation.Demand;
import fettle.engine.rule.Limits;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a cold pack gives against a warm one, for one current.
 *
 * @param cold charge it gives from its present charge, cold [C]
 * @param warm the same at 25 °C [C]
 * @param coldSag drop of the pack's volts when the load comes on, cold [V]
 * @param warmSag the same at 25 °C [V]
 * @param warmUpKelvins the coldest at which it gives nine tenths of what it gives warm [K]; empty if it never does
 * @param working the steps
 */
public record ColdPack(
        Estimate cold,
        Estimate warm,
        Estimate coldSag,
        Estimate warmSag,
        OptionalDouble warmUpKelvins,
        Working working) {
    private static final double WARM_KELVINS = 298.15;
    private static final double NEARLY_ALL = 0.9;
    private static final double KELVINS_CLOSE = 0.25;

    /**
     * Compares a temperature with 25 °C.
     *
     * @param pack the pack as it is known
     * @param limits the rules that hold for it
     * @param amps the load [A], > 0
     * @param coldKelvins the cold, of pack and air [K]
     */
    public static ColdPack of(PackModel pack, Limits limits, double amps, double coldKelvins) {
        LoadAnswer cold = LoadAnswer.ofCurrent(pack.at(coldKelvins, coldKelvins), limits, amps);
        LoadAnswer warm = LoadAnswer.ofCurrent(pack.at(WARM_KELVINS, WARM_KELVINS), limits, amps);
        OptionalDouble warmUp = warmUp(pack, limits, amps, coldKelvins);
        Step step = new Step(
                "cold against warm",
                "the same load at both temperatures; resistance grows with the cold by Arrhenius' law, 22 kJ/mol",
                List.of(
                        "cold = " + TradeUnit.CELSIUS.print(coldKelvins, 0),
                        "load = " + TradeUnit.AMPERE.print(amps, 1),
                        "cold ends at " + cold.binding(),
                        "warm ends at " + warm.binding()),
                TradeUnit.MILLIAMPERE_HOUR.print(cold.drawn(), 0) + " against "
                        + TradeUnit.MILLIAMPERE_HOUR.print(warm.drawn(), 0),
                Circuits.SHAPE);
        return new ColdPack(cold.drawn(), warm.drawn(), cold.firstSag(), warm.firstSag(), warmUp, Working.of(step));
    }

    /** The pack is warmed, the air stays cold. */
    private static OptionalDouble warmUp(PackModel pack, Limits limits, double amps, double coldKelvins) {
        double wanted = NEARLY_ALL * drawn(pack.at(WARM_KELVINS, WARM_KELVINS), limits, amps);
        if (drawn(pack.at(coldKelvins, coldKelvins), limits, amps) >= wanted) {
            return OptionalDouble.of(coldKelvins);
        }
        double low = coldKelvins;
        double high = WARM_KELVINS;
        if (drawn(pack.at(high, coldKelvins), limits, amps) < wanted) {
            return OptionalDouble.empty();
        }
        while (high - low > KELVINS_CLOSE) {
            double middle = 0.5 * (low + high);
            boolean enough = drawn(pack.at(middle, coldKelvins), limits, amps) >= wanted;
            high = enough ? middle : high;
            low = enough ? low : middle;
        }
        return OptionalDouble.of(high);
    }

    private static double drawn(PackModel pack, Limits limits, double amps) {
        return LoadRun.untilLimit(pack, limits, new Demand.Current(amps), amps)
                .passed()
                .outCoulombs();
    }
}
