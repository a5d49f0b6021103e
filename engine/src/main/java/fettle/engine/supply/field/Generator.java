package fettle.engine.supply.field;

import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;

/**
 * A generator and the fuel in its tank, by the two times makers state.
 *
 * @param ratedWatts power it gives continuously [W]
 * @param fullLoadSeconds time of one tank at that power [s]
 * @param quarterLoadSeconds time of one tank at a quarter of it [s], longer
 * @param tank share of the tank that is filled, 0 … 1
 */
public record Generator(double ratedWatts, double fullLoadSeconds, double quarterLoadSeconds, double tank) {
    private static final double QUARTER = 0.25;

    public Generator {
        Faults faults = new Faults();
        faults.range("watts", "power", ratedWatts, TradeUnit.WATT, 50, 50_000, "Read the continuous watts off it.");
        faults.range(
                "fullHours", "time at full load", fullLoadSeconds, TradeUnit.HOUR, 0.1, 100, "See its maker's sheet.");
        faults.range("tank", "fuel", tank, TradeUnit.PERCENT, 0, 100, "Give the share of the tank.");
        if (!(quarterLoadSeconds >= fullLoadSeconds && quarterLoadSeconds <= fullLoadSeconds / QUARTER)) {
            faults.add(
                    "quarterHours",
                    "time at a quarter of the load is " + TradeUnit.HOUR.print(quarterLoadSeconds, 1)
                            + "; expected between the time at full load and four times that."
                            + " See its maker's sheet.");
        }
        faults.refuse();
    }

    /**
     * How long the fuel lasts at a power [s].
     *
     * <p>Formula: fuel a second rises in a straight line with power (Willans line, from memory), drawn through the two
     * times of the maker.
     *
     * @param watts 0 … rated power
     */
    public double seconds(double watts) {
        new Faults()
                .range("load", "load", watts, TradeUnit.WATT, 0, TradeUnit.WATT.fromSi(ratedWatts), "Charge at less.")
                .refuse();
        double full = 1 / fullLoadSeconds;
        double quarter = 1 / quarterLoadSeconds;
        double slope = (full - quarter) / (1 - QUARTER);
        double tanksPerSecond = quarter + slope * (watts / ratedWatts - QUARTER);
        return tank / tanksPerSecond;
    }

    /** Energy it gives until the tank is empty, at a power [J]. */
    public double joules(double watts) {
        return watts * seconds(watts);
    }
}
