package fettle.desk.frame;

import fettle.engine.units.TradeUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What one reader chose, kept in a cookie of that browser: it changes how figures are written and nothing in the book.
 *
 * @param theme colours
 * @param temperature unit of temperatures
 * @param length unit of short lengths
 * @param torque unit of torques
 * @param clock how times of day beside a date are written
 */
public record Preferences(Theme theme, TradeUnit temperature, TradeUnit length, TradeUnit torque, HourClock clock) {
    /** Name of the cookie. */
    public static final String COOKIE = "preferences";

    /** What holds where nothing was chosen. */
    public static final Preferences USUAL = new Preferences(
            Theme.PAPER,
            TradeUnit.CELSIUS,
            TradeUnit.MILLIMETRE,
            TradeUnit.KILOGRAM_FORCE_CENTIMETRE,
            HourClock.HOURS_24);

    public static final List<TradeUnit> TEMPERATURES = List.of(TradeUnit.CELSIUS, TradeUnit.FAHRENHEIT);
    public static final List<TradeUnit> LENGTHS = List.of(TradeUnit.MILLIMETRE, TradeUnit.INCH);
    public static final List<TradeUnit> TORQUES =
            List.of(TradeUnit.KILOGRAM_FORCE_CENTIMETRE, TradeUnit.OUNCE_FORCE_INCH, TradeUnit.NEWTON_METRE);

    /** How the hours of a day are counted. */
    public enum HourClock {
        HOURS_24,
        HOURS_12
    }

    /** What a cookie says; what it does not say, or says wrongly, is as usual. */
    public static Preferences of(@Nullable String cookie) {
        Map<String, String> words = new HashMap<>();
        for (String part : Objects.requireNonNullElse(cookie, "").split("\\.")) {
            int dash = part.indexOf('-');
            if (dash > 0) {
                words.put(part.substring(0, dash), part.substring(dash + 1));
            }
        }
        return USUAL.with(words);
    }

    /** The same with what the words choose: {@code theme}, {@code temperature}, {@code length}, {@code torque}, {@code clock}. */
    public Preferences with(Map<String, String> words) {
        return new Preferences(
                chosen(List.of(Theme.values()), words.get("theme"), theme),
                chosen(TEMPERATURES, words.get("temperature"), temperature),
                chosen(LENGTHS, words.get("length"), length),
                chosen(TORQUES, words.get("torque"), torque),
                chosen(List.of(HourClock.values()), words.get("clock"), clock));
    }

    /** As a cookie. */
    public String cookie() {
        return "theme-" + theme + ".temperature-" + temperature + ".length-" + length + ".torque-" + torque + ".clock-"
                + clock;
    }

    private static <E extends Enum<E>> E chosen(List<E> choices, @Nullable String word, E present) {
        return choices.stream()
                .filter(choice -> choice.name().equalsIgnoreCase(word))
                .findFirst()
                .orElse(present);
    }
}
