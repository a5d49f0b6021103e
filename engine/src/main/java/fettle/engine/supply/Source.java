package fettle.engine.supply;

import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;
import org.jspecify.annotations.Nullable;

/**
 * What feeds chargers.
 *
 * @param name its name
 * @param kind what it is
 * @param maxWatts power it can give continuously [W], &gt; 0
 * @param energyJoules energy it holds [J]; {@code null} where it does not run out
 * @param note free text
 */
public record Source(
        String name,
        SourceKind kind,
        double maxWatts,
        @Nullable Double energyJoules,
        String note) {
    public Source {
        Faults faults = new Faults();
        if (name.isBlank()) {
            faults.add("name", "the source has no name. Give it the name you use.");
        }
        faults.range("maxWatts", "power", maxWatts, TradeUnit.WATT, 1, 100_000, "Read it off the supply.");
        faults.range("energyJoules", "energy", energyJoules, TradeUnit.WATT_HOUR, 1, 1e6, "Rated volts × amp-hours.");
        faults.refuse();
    }
}
