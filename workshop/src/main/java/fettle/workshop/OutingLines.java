package fettle.workshop;

import fettle.engine.charge.answer.ChargeMeans;
import fettle.engine.outing.Attended;
import fettle.engine.outing.Feed;
import fettle.engine.outing.RunWish;
import fettle.engine.outing.Spot;
import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.engine.units.TradeUnit;
import fettle.workshop.outing.DayTimes;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The fields of an outing that take one item a line. */
final class OutingLines {
    private static final Pattern ATTENDED = Pattern.compile("(home|field)\\s*:?\\s+(.+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern FEED =
            Pattern.compile("(home|field)\\s*:?\\s+(.+)\\s+on\\s+(.+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern CRAFT = Pattern.compile("(.+?)(?:\\s*[x×]\\s*(\\d{1,3}))?");
    private static final Pattern VALUE = Pattern.compile("value\\s+(\\d{1,4})", Pattern.CASE_INSENSITIVE);
    private static final Pattern GAP = Pattern.compile("gap\\s+(.+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern TAKES = Pattern.compile("takes\\s+(.+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern SPAN = Pattern.compile(".*\\d:\\d.*\\bto\\b.*", Pattern.CASE_INSENSITIVE);
    private static final String RUN_EXAMPLE =
            "expected craft, times and run time, e.g. Harrier x3; value 5; 09:30 to 15:00; 8 min; gap 10 min; takes 70 %";

    private final DayTimes day;

    OutingLines(DayTimes day) {
        this.day = day;
    }

    List<Attended> attended(String typed) {
        return TypedLines.read("attended", typed, line -> {
            Matcher matcher = ATTENDED.matcher(line.strip());
            if (!matcher.matches()) {
                throw new InputException(
                        "attended",
                        "\"" + line.strip() + "\"; expected a place and two times, e.g. field 09:00 to 16:00.");
            }
            Instant[] span = day.span("attended", "time", matcher.group(2));
            return new Attended(spot(matcher.group(1)), span[0], span[1]);
        });
    }

    String write(Attended attended) {
        return attended.spot().label() + " " + day.write(attended.from(), attended.until());
    }

    List<Feed> feeds(String typed) {
        return TypedLines.read("feeds", typed, line -> {
            List<String> parts = parts(line);
            Matcher matcher = FEED.matcher(parts.isEmpty() ? "" : parts.get(0));
            if (!matcher.matches()) {
                throw new InputException(
                        "feeds",
                        "\"" + line.strip()
                                + "\"; expected place, charger and source, e.g. field: field-pair on field-box;"
                                + " 85 %; 09:00 to 12:00.");
            }
            double efficiency = ChargeMeans.USUAL_EFFICIENCY;
            Instant[] span = null;
            for (String part : parts.subList(1, parts.size())) {
                if (SPAN.matcher(part).matches()) {
                    span = day.span("feeds", "time", part);
                } else {
                    efficiency = OutingForm.share("feeds", "efficiency", part);
                }
            }
            return new Feed(
                    spot(matcher.group(1)),
                    matcher.group(2).strip(),
                    matcher.group(3).strip(),
                    efficiency,
                    span == null ? null : span[0],
                    span == null ? null : span[1]);
        });
    }

    String write(Feed feed) {
        String span = feed.from() == null || feed.until() == null ? "" : "; " + day.write(feed.from(), feed.until());
        return feed.spot().label() + ": " + feed.charger() + " on " + feed.source() + "; "
                + QuantityText.write(feed.efficiencyFraction(), Measure.FRACTION) + span;
    }

    List<RunWish> wishes(String typed) {
        return TypedLines.read("runs", typed, this::wish);
    }

    private RunWish wish(String line) {
        List<String> parts = parts(line);
        Matcher craft = CRAFT.matcher(parts.isEmpty() ? "" : parts.get(0));
        if (!craft.matches()) {
            throw new InputException("runs", "\"" + line.strip() + "\"; " + RUN_EXAMPLE + ".");
        }
        WishParts said = new WishParts(line);
        parts.subList(1, parts.size()).forEach(said::take);
        return said.made(craft.group(1).strip(), craft.group(2) == null ? 1 : Integer.parseInt(craft.group(2)));
    }

    String write(RunWish wish) {
        Double takes = wish.takesFraction();
        return wish.craft() + " x" + wish.count() + "; value " + wish.value() + "; "
                + day.write(wish.earliest(), wish.latest()) + "; "
                + QuantityText.write(wish.durationSeconds(), TradeUnit.MINUTE)
                + (wish.gapSeconds() > 0 ? "; gap " + QuantityText.write(wish.gapSeconds(), TradeUnit.MINUTE) : "")
                + (takes == null ? "" : "; takes " + QuantityText.write(takes, Measure.FRACTION));
    }

    private static List<String> parts(String line) {
        return Arrays.stream(line.split(";"))
                .map(String::strip)
                .filter(part -> !part.isEmpty())
                .toList();
    }

    private static Spot spot(String word) {
        return Spot.valueOf(word.toUpperCase(Locale.ROOT));
    }

    /** What the parts of one line of runs say. */
    private final class WishParts {
        private final String line;
        private int value = 1;
        private Instant @Nullable [] span;
        private @Nullable Double seconds;
        private double gapSeconds;
        private @Nullable Double takes;

        WishParts(String line) {
            this.line = line;
        }

        void take(String part) {
            Matcher matcher = VALUE.matcher(part);
            if (matcher.matches()) {
                value = Integer.parseInt(matcher.group(1));
                return;
            }
            matcher = GAP.matcher(part);
            if (matcher.matches()) {
                gapSeconds = seconds("gap", matcher.group(1));
                return;
            }
            matcher = TAKES.matcher(part);
            if (matcher.matches()) {
                takes = OutingForm.share("runs", "share taken", matcher.group(1));
            } else if (SPAN.matcher(part).matches()) {
                span = day.span("runs", "time", part);
            } else {
                seconds = seconds("run time", part);
            }
        }

        RunWish made(String craft, int count) {
            if (span == null || seconds == null) {
                throw new InputException("runs", "\"" + line.strip() + "\"; " + RUN_EXAMPLE + ".");
            }
            return new RunWish(craft, count, value, span[0], span[1], seconds, gapSeconds, takes);
        }

        private double seconds(String what, String typed) {
            return QuantityText.si("runs", what, typed, Measure.DURATION, TradeUnit.MINUTE);
        }
    }
}
