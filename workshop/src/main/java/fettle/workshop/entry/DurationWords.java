package fettle.workshop.entry;

import fettle.engine.units.TradeUnit;
import java.util.List;
import java.util.StringJoiner;

/** A time in the units people say: {@code 1 h 30 min}. */
final class DurationWords {
    private static final List<TradeUnit> WHOLE = List.of(TradeUnit.DAY, TradeUnit.HOUR, TradeUnit.MINUTE);

    private DurationWords() {}

    static String of(double seconds) {
        StringJoiner words = new StringJoiner(" ");
        long left = Math.round(seconds);
        for (TradeUnit unit : WHOLE) {
            long one = (long) unit.toSi(1);
            if (left >= one) {
                words.add(left / one + " " + unit.symbol());
                left %= one;
            }
        }
        if (left != 0 || words.length() == 0) {
            words.add(left + " " + TradeUnit.SECOND.symbol());
        }
        return words.toString();
    }
}
