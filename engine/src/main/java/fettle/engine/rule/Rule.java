package fettle.engine.rule;

import fettle.engine.cell.Chemistry;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import java.util.Locale;

/**
 * One limit with its source.
 *
 * @param chemistry the chemistry it holds for
 * @param quantity what it limits
 * @param valueSi the limit, SI
 * @param citation its source and status
 * @param loosened true where a person made it looser than the default, which must be shown
 */
public record Rule(Chemistry chemistry, Quantity quantity, double valueSi, Citation citation, boolean loosened) {
    private static final int MOST_DECIMALS = 4;

    /** Stable id, e.g. {@code lipo.charge-limit}. */
    public String id() {
        return chemistry.label().toLowerCase(Locale.ROOT) + "." + quantity.key();
    }

    /** The limit in its own unit, with as many decimals as it has: a limit is never shown rounded. */
    public String print() {
        TradeUnit unit = quantity.unit();
        double value = unit.fromSi(valueSi);
        int decimals = unit == TradeUnit.VOLT ? 2 : 0;
        while (decimals < MOST_DECIMALS && isRounded(value, decimals)) {
            decimals++;
        }
        return unit.print(valueSi, decimals);
    }

    private static boolean isRounded(double value, int decimals) {
        double shifted = value * Math.pow(10, decimals);
        return Math.abs(shifted - Math.rint(shifted)) > 1e-6;
    }
}
