package fettle.engine.units;

import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Times written in several parts: {@code 1h30}, {@code 1 h 30 min}, {@code 7min30s}, {@code 1d12h}. */
final class CompoundDuration {
    private static final List<TradeUnit> FALLING =
            List.of(TradeUnit.DAY, TradeUnit.HOUR, TradeUnit.MINUTE, TradeUnit.SECOND);
    private static final Pattern PART = Pattern.compile("(\\d{1,6})\\s*([A-Za-z]*)\\s*");

    private CompoundDuration() {}

    /**
     * Seconds; empty unless there are at least two whole numbers in falling units, each below one of the unit before it.
     * A last number without unit takes the next smaller unit.
     */
    static OptionalDouble seconds(String written) {
        Matcher part = PART.matcher(written.strip());
        double seconds = 0;
        int previous = -1;
        int end = 0;
        int parts = 0;
        while (part.lookingAt()) {
            int place = place(part.group(2), previous);
            double partSeconds = place < 0 ? -1 : FALLING.get(place).toSi(Double.parseDouble(part.group(1)));
            boolean fits = previous < 0 || partSeconds < FALLING.get(previous).toSi(1);
            if (place <= previous || !fits) {
                return OptionalDouble.empty();
            }
            seconds += partSeconds;
            previous = place;
            end = part.end();
            parts++;
            part.region(end, part.regionEnd());
        }
        return parts > 1 && end == written.strip().length() ? OptionalDouble.of(seconds) : OptionalDouble.empty();
    }

    /** Place of a unit among the falling ones; -1 if it is none. */
    private static int place(String unit, int previous) {
        if (unit.isEmpty()) {
            return previous >= 0 && previous + 1 < FALLING.size() ? previous + 1 : -1;
        }
        return Measure.DURATION.unit(unit).map(FALLING::indexOf).orElse(-1);
    }
}
