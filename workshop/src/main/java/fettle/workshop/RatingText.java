package fettle.workshop;

import fettle.engine.control.servo.Rating;
import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.engine.units.TradeUnit;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A servo's data at one voltage as typed: {@code 6V 5.5kg·cm 0.12s idle 8mA moving 0.25A stall 1.6A}. The time is that
 * for sixty degrees; all after the torque may be left out.
 */
final class RatingText {
    private static final String QUANTITY = "([\\d.,]+\\s*[A-Za-z·-]+)";
    private static final Pattern WRITTEN = Pattern.compile(
            QUANTITY + "\\s+" + QUANTITY + "(?:\\s+([\\d.,]+\\s*s))?(?:\\s+idle\\s+" + QUANTITY + ")?(?:\\s+moving\\s+"
                    + QUANTITY + ")?(?:\\s+stall\\s+" + QUANTITY + ")?",
            Pattern.CASE_INSENSITIVE);

    private RatingText() {}

    static Rating parse(String typed) {
        Matcher matcher = WRITTEN.matcher(typed.strip());
        if (!matcher.matches()) {
            throw new InputException(
                    "ratings",
                    "\"" + typed.strip() + "\" is not volts, torque and what else is known, e.g. 6V 5.5kg·cm 0.12s idle"
                            + " 8mA moving 0.25A stall 1.6A.");
        }
        Double seconds = optional("time for 60°", matcher.group(3), Measure.DURATION);
        return new Rating(
                si("voltage", matcher.group(1), Measure.VOLTAGE),
                si("torque", matcher.group(2), Measure.TORQUE),
                seconds == null ? null : Double.valueOf(Rating.radiansPerSecond(seconds)),
                optional("current at rest", matcher.group(4), Measure.CURRENT),
                optional("moving current", matcher.group(5), Measure.CURRENT),
                optional("stall current", matcher.group(6), Measure.CURRENT));
    }

    static String write(Rating rating) {
        Double speed = rating.radiansPerSecond();
        return compact(TradeUnit.VOLT, rating.volts())
                + " " + compact(TradeUnit.KILOGRAM_FORCE_CENTIMETRE, rating.stallNewtonMetres())
                + (speed == null ? "" : " " + seconds(Rating.radiansPerSecond(speed)))
                + named(" idle ", rating.idleAmps())
                + named(" moving ", rating.movingAmps())
                + named(" stall ", rating.stallAmps());
    }

    private static double si(String what, String typed, Measure measure) {
        return QuantityText.si("ratings", what, typed, measure, null);
    }

    private static @Nullable Double optional(String what, @Nullable String typed, Measure measure) {
        return typed == null ? null : Double.valueOf(si(what, typed, measure));
    }

    private static String named(String name, @Nullable Double amps) {
        return amps == null ? "" : name + compact(TradeUnit.AMPERE, amps);
    }

    /** To the microsecond: what was typed comes back, though the speed is kept instead of the time. */
    private static String seconds(double seconds) {
        return String.format(Locale.ROOT, "%.6f", seconds).replaceAll("\\.?0+$", "") + "s";
    }

    private static String compact(TradeUnit unit, double si) {
        return QuantityText.write(si, unit).replace(" ", "");
    }
}
