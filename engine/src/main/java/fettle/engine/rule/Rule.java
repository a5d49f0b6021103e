package fettle.engine.rule;

import fettle.engine.cell.Chemistry;
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
    /** Stable id, e.g. {@code lipo.charge-limit}. */
    public String id() {
        return chemistry.label().toLowerCase(Locale.ROOT) + "." + quantity.key();
    }

    /** The limit in its own unit, with as many decimals as it has: a limit is never shown rounded. */
    public String print() {
        return quantity.print(valueSi);
    }
}
