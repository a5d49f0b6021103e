package fettle.workshop;

import fettle.engine.control.setup.Rate;
import fettle.engine.control.setup.SurfaceSetting;
import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.engine.units.TradeUnit;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A surface's setting as a line: {@code left aileron; wing; 1100 1500 1900; 50 mm; high 20/16, low 12/10; arm 10; horn 15;
 * pushrod aft 80 above 0 arm 90 horn 90; idle 8 mA; largest 0.4 A; reversed}. Name, servo, end points around the centre in
 * µs, chord, and throws up/down in degrees; what follows may be left out.
 */
public final class SurfaceText {
    private static final int NEEDED = 5;
    private static final Pattern RATE = Pattern.compile("(.*?)\\s*([\\d.,]+)\\s*°?\\s*/\\s*([\\d.,]+)\\s*°?");
    private static final String EXAMPLE =
            "expected name; servo; lowest centre highest µs; chord; throws, e.g. left aileron; wing; 1100 1500 1900; 50 mm;"
                    + " high 20/16, low 12/10; arm 10; horn 15; pushrod aft 80 above 0; idle 8 mA; largest 0.4 A; reversed";
    private static final List<String> WORDS =
            List.of("arm", "horn", "pushrod", "cables", "torque-rod", "idle", "largest", "reversed");

    private SurfaceText() {}

    /** The surfaces, one a line; refuses with the number of every faulty line. */
    public static List<SurfaceSetting> parse(String typed) {
        return TypedLines.read("surfaces", typed, SurfaceText::setting);
    }

    /** A setting as it would be typed. */
    public static String write(SurfaceSetting setting) {
        return setting.surface() + "; " + setting.servo() + "; "
                + micros(setting.lowestSeconds()) + " " + micros(setting.centreSeconds()) + " "
                + micros(setting.highestSeconds()) + "; "
                + QuantityText.write(setting.chordMetres(), TradeUnit.MILLIMETRE) + "; "
                + setting.rates().stream().map(SurfaceText::rate).collect(Collectors.joining(", "))
                + named("arm", setting.armHoleMetres(), TradeUnit.MILLIMETRE)
                + named("horn", setting.hornHoleMetres(), TradeUnit.MILLIMETRE)
                + LinkageWords.write(setting.linkage())
                + named("idle", setting.idleAmps(), TradeUnit.AMPERE)
                + named("largest", setting.largestAmps(), TradeUnit.AMPERE)
                + (setting.reversed() ? "; reversed" : "");
    }

    private static SurfaceSetting setting(String line) {
        List<String> parts = Arrays.stream(line.split(";")).map(String::strip).toList();
        if (parts.size() < NEEDED) {
            throw new InputException("surfaces", parts.size() + " parts; " + EXAMPLE + ".");
        }
        List<Double> pulses = Arrays.stream(parts.get(2).split("\\s+"))
                .map(pulse -> si("pulse", pulse, Measure.PULSE, TradeUnit.MICROSECOND))
                .toList();
        if (pulses.size() != 3) {
            throw new InputException(
                    "surfaces", "pulses are \"" + parts.get(2) + "\"; expected lowest, centre and highest in µs.");
        }
        Map<String, String> more = more(parts.subList(NEEDED, parts.size()));
        Double arm = optional("arm", more, Measure.LENGTH, TradeUnit.MILLIMETRE);
        Double horn = optional("horn", more, Measure.LENGTH, TradeUnit.MILLIMETRE);
        return new SurfaceSetting(
                parts.get(0),
                parts.get(1),
                pulses.get(0),
                pulses.get(1),
                pulses.get(2),
                more.containsKey("reversed"),
                si("chord", parts.get(3), Measure.LENGTH, TradeUnit.MILLIMETRE),
                Arrays.stream(parts.get(4).split(",(?!\\d)"))
                        .map(SurfaceText::rate)
                        .toList(),
                arm,
                horn,
                optional("idle", more, Measure.CURRENT, null),
                optional("largest", more, Measure.CURRENT, null),
                LinkageWords.linkage(more, arm, horn));
    }

    private static Map<String, String> more(List<String> parts) {
        Map<String, String> more = new HashMap<>();
        for (String part : parts) {
            String word = part.split("\\s+")[0].toLowerCase(Locale.ROOT);
            if (!word.isEmpty() && !WORDS.contains(word)) {
                throw new InputException(
                        "surfaces", "\"" + part + "\" is none of " + String.join(", ", WORDS) + "; " + EXAMPLE + ".");
            }
            more.put(word, part.substring(word.length()).strip());
        }
        return more;
    }

    private static Rate rate(String typed) {
        Matcher matcher = RATE.matcher(typed.strip());
        if (!matcher.matches()) {
            throw new InputException(
                    "surfaces", "throws are \"" + typed.strip() + "\"; expected up/down in degrees, e.g. high 20/16.");
        }
        return new Rate(
                matcher.group(1).isEmpty() ? "all" : matcher.group(1),
                si("throw", matcher.group(2), Measure.ANGLE, TradeUnit.DEGREE),
                si("throw", matcher.group(3), Measure.ANGLE, TradeUnit.DEGREE));
    }

    private static String rate(Rate rate) {
        return rate.name() + " " + degrees(rate.upRadians()) + "/" + degrees(rate.downRadians());
    }

    private static double si(String what, String typed, Measure measure, @Nullable TradeUnit bare) {
        return QuantityText.si("surfaces", what, typed, measure, bare);
    }

    private static @Nullable Double optional(
            String word, Map<String, String> more, Measure measure, @Nullable TradeUnit bare) {
        String typed = more.get(word);
        return typed == null ? null : Double.valueOf(si(word, typed, measure, bare));
    }

    private static String named(String word, @Nullable Double si, TradeUnit unit) {
        return si == null ? "" : "; " + word + " " + QuantityText.write(si, unit);
    }

    private static String micros(double seconds) {
        return QuantityText.writeBare(seconds, TradeUnit.MICROSECOND);
    }

    private static String degrees(double radians) {
        return QuantityText.writeBare(radians, TradeUnit.DEGREE);
    }
}
