package fettle.desk.frame;

import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Prints figures, dates and spans as pages show them, in the reader's time zone. */
public final class Figures {
    public static final String NOT_KNOWN = "—";

    private static final DateTimeFormatter THIS_YEAR = DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter ANY_YEAR = DateTimeFormatter.ofPattern("d MMM yyyy HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM yyyy", Locale.ENGLISH);
    private static final Duration SOON = Duration.ofHours(48);

    private static final Pattern INSIDE_FIGURE = Pattern.compile(" (?=±)|(?<=±) |(?<=\\d) (?=("
            + Arrays.stream(TradeUnit.values())
                    .map(unit -> Pattern.quote(unit.symbol()))
                    .collect(Collectors.joining("|"))
            + ")(?![\\p{L}\\d]))");

    private final Clock clock;

    public Figures(Clock clock) {
        this.clock = clock;
    }

    /** The reader's time zone. */
    public ZoneId zone() {
        return clock.getZone();
    }

    public Instant now() {
        return clock.instant();
    }

    /** A moment, e.g. {@code 14 Oct 18:30}; with the year if it is not this one. */
    public String moment(@Nullable Instant instant) {
        if (instant == null) {
            return NOT_KNOWN;
        }
        ZoneId zone = clock.getZone();
        ZonedDateTime moment = instant.atZone(zone);
        boolean thisYear = moment.getYear() == clock.instant().atZone(zone).getYear();
        return (thisYear ? THIS_YEAR : ANY_YEAR).format(moment);
    }

    /** A moment with its year, for what is kept on paper. */
    public String dated(Instant instant) {
        return ANY_YEAR.format(instant.atZone(clock.getZone()));
    }

    /** A month far ahead or back, e.g. {@code Oct 2027}: forecasts tell no better. */
    public String month(Instant instant) {
        return MONTH.format(instant.atZone(clock.getZone()));
    }

    /** When something is due, seen from now, e.g. {@code in 5 h}, {@code 3 d overdue}, {@code when wanted}. */
    public String due(@Nullable Instant due) {
        if (due == null) {
            return "when wanted";
        }
        Duration left = Duration.between(now(), due);
        if (left.abs().toMinutes() < 1) {
            return "now";
        }
        return left.isNegative() ? span(left.negated()) + " overdue" : "in " + span(left);
    }

    /** How long ago, e.g. {@code 3 d ago}. */
    public String ago(@Nullable Instant instant) {
        return instant == null ? "never" : span(Duration.between(instant, now())) + " ago";
    }

    /** A span of time in its largest whole unit, rounded down. */
    public static String span(Duration span) {
        if (span.toMinutes() < 60) {
            return Math.max(0, span.toMinutes()) + " min";
        }
        return span.compareTo(SOON) < 0 ? span.toHours() + " h" : span.toDays() + " d";
    }

    /** A sentence in which no line ends between a figure, its ± and its unit. */
    public static String unbroken(String sentence) {
        return INSIDE_FIGURE.matcher(sentence).replaceAll("\u00a0");
    }

    /** A time on a trace's clock: {@code 0:07.5}, {@code 4:10}, {@code 1:02:03}; tenths only under a minute. */
    public static String clock(double seconds) {
        if (seconds < 60) {
            return String.format(Locale.ROOT, "0:%04.1f", Math.floor(seconds * 10) / 10);
        }
        long whole = Math.round(seconds);
        return whole < 3600
                ? String.format(Locale.ROOT, "%d:%02d", whole / 60, whole % 60)
                : String.format(Locale.ROOT, "%d:%02d:%02d", whole / 3600, whole / 60 % 60, whole % 60);
    }

    /** An estimate as value ± one standard deviation, or a dash where there is none. */
    public static String estimate(@Nullable Estimate estimate, TradeUnit unit, int decimals) {
        return estimate == null ? NOT_KNOWN : unit.print(estimate, decimals);
    }

    /** An SI value in a trade unit, or a dash where there is none. */
    public static String quantity(@Nullable Double si, TradeUnit unit, int decimals) {
        return si == null ? NOT_KNOWN : unit.print(si, decimals);
    }
}
