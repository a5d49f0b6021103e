package fettle.workshop.entry;

import fettle.engine.units.Measure;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * When it was: {@code at 18:30}, {@code at 2026-11-20 18:30}, {@code on 2026-11-20}, {@code yesterday 18:30},
 * {@code 2h ago}; now if nothing is said. Never in the future. Not thread-safe.
 */
final class Moment {
    private static final DateTimeFormatter SHOWN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");
    private static final Pattern DAY = Pattern.compile("\\d{1,4}[-./]\\d{1,2}[-./]\\d{1,4}");
    private static final int EARLIEST_YEAR = 1990;

    private final ZonedDateTime now;
    private final Remarks remarks;
    private final Once<ZonedDateTime> said = new Once<>("the time");

    Moment(Clock clock, Remarks remarks) {
        this.now = ZonedDateTime.now(clock);
        this.remarks = remarks;
    }

    static boolean begins(Word word, Words words) {
        return word.is("at")
                || word.is("on")
                || word.is("yesterday")
                || word.is("today")
                || isDay(word)
                || isAgo(word, words);
    }

    static boolean isDay(Word word) {
        return !word.quoted() && DAY.matcher(word.text()).matches();
    }

    private static boolean isAgo(Word word, Words words) {
        return words.nextIs("ago") && Quantities.is(word, Measure.DURATION);
    }

    /** Reads what follows a word that begins a time. */
    void take(Word first, Words words) {
        if (isAgo(first, words)) {
            words.next();
            ago(first);
            return;
        }
        int problemsBefore = remarks.problems().size();
        LocalDate day = day(first, words).orElse(null);
        LocalTime time = time(words).orElse(null);
        if (remarks.problems().size() > problemsBefore
                || (day == null && time == null && words.nextIs(Hints::isKnown))) {
            return;
        }
        if (day == null && time == null) {
            remarks.problem(
                    first,
                    "\"" + first.text() + "\" needs a time or a day behind it, e.g. at 18:30 or on " + now.toLocalDate()
                            + ".");
            return;
        }
        keep(first, day == null ? now.toLocalDate() : day, time);
    }

    /** The moment said, or now. */
    Instant instant() {
        ZonedDateTime at = said.value();
        return (at == null ? now : at).toInstant();
    }

    /** The day said, or today. */
    LocalDate day() {
        ZonedDateTime at = said.value();
        return (at == null ? now : at).toLocalDate();
    }

    private void ago(Word length) {
        new Quantities(remarks)
                .si(length, "how long ago", Measure.DURATION, null)
                .ifPresent(seconds -> {
                    ZonedDateTime at = now.minusSeconds(Math.round(seconds));
                    keep(length, at, SHOWN.format(at));
                });
    }

    private void keep(Word first, LocalDate day, @Nullable LocalTime time) {
        boolean today = day.equals(now.toLocalDate());
        ZonedDateTime at = time != null
                ? day.atTime(time).atZone(now.getZone())
                : today ? now : day.atTime(LocalTime.NOON).atZone(now.getZone());
        keep(first, at, SHOWN.format(at) + (time == null && !today ? " (no time given)" : ""));
    }

    private void keep(Word first, ZonedDateTime at, String phrase) {
        if (at.isAfter(now)) {
            remarks.problem(
                    first,
                    SHOWN.format(at) + " is still to come; it is " + SHOWN.format(now)
                            + " now. Give the day too, e.g. yesterday 18:30.");
        } else if (at.getYear() < EARLIEST_YEAR) {
            remarks.problem(first, SHOWN.format(at) + " is before " + EARLIEST_YEAR + ". Check the year.");
        } else if (said.put(first, at, remarks)) {
            remarks.understood(phrase);
        }
    }

    private Optional<LocalDate> day(Word first, Words words) {
        if (isDay(first)) {
            return day(first);
        }
        if (first.is("today")) {
            return Optional.of(now.toLocalDate());
        }
        if (first.is("yesterday")) {
            return Optional.of(now.toLocalDate().minusDays(1));
        }
        return words.nextIf(Moment::isDay).flatMap(this::day);
    }

    private Optional<LocalDate> day(Word word) {
        try {
            return Optional.of(LocalDate.parse(word.text()));
        } catch (DateTimeException notADay) {
            remarks.problem(
                    word,
                    "\"" + word.text() + "\" is not a day of the calendar written year-month-day, e.g. "
                            + now.toLocalDate() + ".");
            return Optional.empty();
        }
    }

    private Optional<LocalTime> time(Words words) {
        boolean at =
                words.nextIs("at") && words.peek(1).filter(ColonTime::isTime).isPresent();
        words.skip(at ? 1 : 0);
        return words.nextIf(ColonTime::isTime).flatMap(this::time);
    }

    private Optional<LocalTime> time(Word word) {
        boolean oneDigitHour = word.text().indexOf(':') == 1;
        try {
            return Optional.of(LocalTime.parse((oneDigitHour ? "0" : "") + word.text()));
        } catch (DateTimeException notATime) {
            remarks.problem(word, "\"" + word.text() + "\" is not a time of day; expected 00:00 to 23:59.");
            return Optional.empty();
        }
    }
}
