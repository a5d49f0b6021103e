package fettle.engine.trace;

import fettle.engine.units.TradeUnit;
import java.util.Locale;

/** What can go wrong in a trace, with the unit its value is told in. */
public enum EventKind {
    UNDER_VOLTAGE("below its lowest volts under load", TradeUnit.VOLT, 3),
    OVER_CHARGE("above its charge limit", TradeUnit.VOLT, 3),
    OVER_CURRENT("more current than its rating", TradeUnit.AMPERE, 1),
    OVER_CHARGE_CURRENT("charged with more current than its rating", TradeUnit.AMPERE, 1),
    OVER_TEMPERATURE("hotter than its limit", TradeUnit.CELSIUS, 1),
    CHARGED_COLD("charged colder than allowed", TradeUnit.CELSIUS, 1),
    CHARGED_HOT("charged warmer than allowed", TradeUnit.CELSIUS, 1),
    RESISTANCE_STEP("resistance rose suddenly", TradeUnit.MILLIOHM, 1),
    CELL_COLLAPSE("fell away from its neighbours under load", TradeUnit.VOLT, 3);

    private final String label;
    private final TradeUnit unit;
    private final int decimals;

    EventKind(String label, TradeUnit unit, int decimals) {
        this.label = label;
        this.unit = unit;
        this.decimals = decimals;
    }

    public String label() {
        return label;
    }

    /** Stable key, e.g. {@code under-voltage}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public TradeUnit unit() {
        return unit;
    }

    /** A value of this kind in its trade unit. */
    public String print(double si) {
        return unit.print(si, decimals);
    }
}
