package fettle.engine.pack.simulation;

import fettle.engine.units.TradeUnit;
import java.util.Locale;

/**
 * A condition that ends a protocol step.
 *
 * @param kind what is watched
 * @param value when it is met, SI
 */
public record End(EndKind kind, double value) {
    private static final int DECIMALS = 4;

    public static End after(double seconds) {
        return new End(EndKind.AFTER, seconds);
    }

    boolean met(Moment now) {
        return kind.excess(now, value) >= 0;
    }

    /** The condition in words, e.g. {@code volts of any cell at most 3.3 V}. */
    public String sentence() {
        String figure =
                String.format(Locale.ROOT, "%." + DECIMALS + "f", kind.unit().fromSi(value));
        return kind.meaning() + " " + figure.replaceAll("\\.?0+$", "") + " " + unitOf(kind.unit());
    }

    private static String unitOf(TradeUnit unit) {
        return unit.symbol();
    }
}
