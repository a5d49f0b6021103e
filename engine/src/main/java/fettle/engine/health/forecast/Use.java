package fettle.engine.health.forecast;

import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;

/**
 * What of a pack's use wears it besides the count of cycles.
 *
 * @param fullShare share of the time it stands full, 0 … 1; the rest it stands at storage charge
 * @param keptKelvins temperature where it is kept [K], 5 to 55 °C
 * @param depthFraction how much of its charge a run takes, 0.1 … 1
 */
public record Use(double fullShare, double keptKelvins, double depthFraction) {
    /** Kept at storage charge at 25 °C, run to a fifth. */
    public static final Use USUAL = new Use(0, TradeUnit.CELSIUS.toSi(25), 0.8);

    public Use {
        new Faults()
                .range("full", "share of the time kept full", fullShare, TradeUnit.PERCENT, 0, 100, "Give hours a day.")
                .range(
                        "kept",
                        "temperature where it is kept",
                        keptKelvins,
                        TradeUnit.CELSIUS,
                        5,
                        55,
                        "Models end there.")
                .range("depth", "depth of a run", depthFraction, TradeUnit.PERCENT, 10, 100, "Give charge taken out.")
                .refuse();
    }
}
