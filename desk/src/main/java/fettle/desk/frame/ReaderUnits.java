package fettle.desk.frame;

import fettle.desk.frame.Preferences.HourClock;
import fettle.engine.units.TradeUnit;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Writes the figures of a finished page in the reader's units. It works on the page's text, so that every sentence follows,
 * whoever wrote it; what can be typed again as it stands (code, fields) and what others wrote (citations) is left alone.
 *
 * <p>A figure behind {@code ±} or {@code by} is a difference and gets no offset. Converted figures keep enough decimals
 * that no limit moves.
 */
final class ReaderUnits {
    private static final Pattern PART = Pattern.compile(
            "<(script|style|code|kbd|textarea|option|cite|title)\\b.*?</\\1>|aria-label=\"[^\"]*\"|<[^>]*?(?=aria-label=\")|<[^>]*>|[^<>]+(?![^<]*>)",
            Pattern.DOTALL);
    private static final Pattern FIGURES = Pattern.compile(
            "(?<![\\w.,:-])(?<before>± ?|by )?(?<list>(?:-?\\d+(?:\\.\\d+)?(?: to | and | × | x |–))*)(?<value>-?\\d+(?:\\.\\d+)?)"
                    + "(?:(?<pm>[ \u00a0]±[ \u00a0])(?<dev>\\d+(?:\\.\\d+)?))?(?<gap>[ \u00a0])(?<unit>°C|mm|kg·cm)(?![\\w²·/°])");
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?");
    private static final Pattern MOMENT =
            Pattern.compile("\\b(\\d{1,2} [A-Z][a-z]{2}(?: \\d{4})?) (\\d{2}):(\\d{2})\\b");
    private static final int NOON = 12;

    private final Map<TradeUnit, TradeUnit> wanted = new EnumMap<>(TradeUnit.class);
    private final HourClock clock;

    ReaderUnits(Preferences preferences) {
        put(TradeUnit.CELSIUS, preferences.temperature());
        put(TradeUnit.MILLIMETRE, preferences.length());
        put(TradeUnit.KILOGRAM_FORCE_CENTIMETRE, preferences.torque());
        this.clock = preferences.clock();
    }

    private void put(TradeUnit printed, TradeUnit reader) {
        if (printed != reader) {
            wanted.put(printed, reader);
        }
    }

    /** The page in the reader's units. */
    String in(String html) {
        if (wanted.isEmpty() && clock == HourClock.HOURS_24) {
            return html;
        }
        return PART.matcher(html)
                .replaceAll(part -> Matcher.quoteReplacement(isText(part) ? text(part.group()) : part.group()));
    }

    private static boolean isText(MatchResult part) {
        return !part.group().startsWith("<");
    }

    /** One stretch of text. */
    String text(String text) {
        Matcher found = FIGURES.matcher(text);
        StringBuilder converted = new StringBuilder();
        while (found.find()) {
            found.appendReplacement(converted, Matcher.quoteReplacement(converted(found)));
        }
        String figures = found.appendTail(converted).toString();
        return clock == HourClock.HOURS_24 ? figures : MOMENT.matcher(figures).replaceAll(ReaderUnits::onTwelve);
    }

    private String converted(Matcher found) {
        TradeUnit printed = unit(found.group("unit"));
        TradeUnit reader = wanted.get(printed);
        if (reader == null) {
            return found.group();
        }
        String before = found.group("before") == null ? "" : found.group("before");
        boolean difference = !before.isEmpty();
        String list = NUMBER.matcher(found.group("list"))
                .replaceAll(number -> figure(number.group(), printed, reader, difference));
        String dev = found.group("dev");
        return before
                + list
                + figure(found.group("value"), printed, reader, difference)
                + (dev == null ? "" : found.group("pm") + figure(dev, printed, reader, true))
                + found.group("gap")
                + reader.symbol();
    }

    private static String figure(String number, TradeUnit printed, TradeUnit reader, boolean difference) {
        double value = Double.parseDouble(number);
        double other = difference
                ? reader.differenceFromSi(printed.toSi(value) - printed.toSi(0))
                : reader.fromSi(printed.toSi(value));
        int point = number.indexOf('.');
        int decimals = (point < 0 ? 0 : number.length() - point - 1) + added(reader);
        String converted = String.format(Locale.ROOT, "%." + decimals + "f", other);
        return converted.matches("-0(\\.0*)?") ? converted.substring(1) : converted;
    }

    /** Decimals that a figure needs more, so that a step of its last place stays at least as fine. */
    private static int added(TradeUnit reader) {
        return switch (reader) {
            case INCH, NEWTON_METRE -> 2;
            case FAHRENHEIT -> 1;
            default -> 0;
        };
    }

    private static TradeUnit unit(String symbol) {
        return switch (symbol) {
            case "°C" -> TradeUnit.CELSIUS;
            case "mm" -> TradeUnit.MILLIMETRE;
            default -> TradeUnit.KILOGRAM_FORCE_CENTIMETRE;
        };
    }

    private static String onTwelve(MatchResult moment) {
        int hour = Integer.parseInt(moment.group(2));
        return moment.group(1) + " " + (hour % NOON == 0 ? NOON : hour % NOON) + ":" + moment.group(3) + " "
                + (hour < NOON ? "am" : "pm");
    }
}
