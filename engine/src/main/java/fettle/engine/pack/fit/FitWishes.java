package fettle.engine.pack.fit;

import fettle.engine.units.Faults;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import org.jspecify.annotations.Nullable;

/**
 * What is asked of a pack beside what the craft's entry says.
 *
 * @param leastKilograms lightest pack that balances the craft [kg]; {@code null} for any
 * @param mostKilograms heaviest it carries [kg]; {@code null} for any
 * @param leastCoulombs least capacity [C]; {@code null} for any
 */
public record FitWishes(
        @Nullable Double leastKilograms,
        @Nullable Double mostKilograms,
        @Nullable Double leastCoulombs) {
    public static final FitWishes NONE = new FitWishes(null, null, null);

    public FitWishes {
        Faults faults = new Faults();
        faults.range("lightest", "lightest pack", leastKilograms, TradeUnit.GRAM, 1, 50_000, "Give it in g.");
        faults.range("heaviest", "heaviest pack", mostKilograms, TradeUnit.GRAM, 1, 50_000, "Give it in g.");
        faults.range("capacity", "least capacity", leastCoulombs, TradeUnit.MILLIAMPERE_HOUR, 10, 200_000, "In mAh.");
        faults.refuse();
        if (leastKilograms != null && mostKilograms != null && leastKilograms > mostKilograms) {
            throw new InputException("lightest", "the lightest pack is heavier than the heaviest. Swap them.");
        }
    }
}
