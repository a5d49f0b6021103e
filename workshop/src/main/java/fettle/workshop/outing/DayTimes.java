package fettle.workshop.outing;

import fettle.engine.units.InputException;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Times of an outing as people write them: {@code 09:30}, {@code day before 19:00}, {@code day after 01:30} or
 * {@code 2026-05-15 19:00}. Where the clock is put back and a time comes twice, its offset tells which: {@code 02:30+01:00}.
 *
 * @param date the day of the outing
 * @param zone the zone its times are in
 */
public record DayTimes(LocalDate date, ZoneId zone) {
    private static final Pattern WRITTEN = Pattern.compile(
            "(?:(day before|day after|\\d{4}-\\d{2}-\\d{2})\\s+)?(\\d{1,2}:\\d{2})\\s*([+-]\\d{2}:\\d{2}|Z)?",
            Pattern.CASE_INSENSITIVE);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    /** The instant; refuses at the field what is no time, does not exist or comes twice. */
    public Instant read(String field, String what, String typed) {
        return read(field, what, typed, date);
    }

    /** The same, a bare time being on another day. */
    Instant read(String field, String what, String typed, LocalDate bareDay) {
        Matcher matcher = WRITTEN.matcher(typed.strip());
        if (!matcher.matches()) {
            throw new InputException(
                    field,
                    what + " is \"" + typed.strip() + "\"; expected a time such as 09:30, day before 19:00 or " + date
                            + " 19:00.");
        }
        try {
            String clock = matcher.group(2).length() == 4 ? "0" + matcher.group(2) : matcher.group(2);
            LocalDateTime local = day(matcher.group(1), bareDay).atTime(LocalTime.parse(clock));
            return instant(field, what, local, matcher.group(3));
        } catch (DateTimeException wrong) {
            throw new InputException(
                    field, what + " is \"" + typed.strip() + "\"; expected a day of the calendar and 00:00 to 23:59.");
        }
    }

    /** A span, {@code 09:00 to 16:00}; its end is on the day of its start unless it says otherwise. */
    public Instant[] span(String field, String what, String typed) {
        String[] ends = typed.split("\\bto\\b", -1);
        if (ends.length != 2) {
            throw new InputException(
                    field, what + " is \"" + typed.strip() + "\"; expected two times, e.g. 09:00 to 16:00.");
        }
        Instant from = read(field, what, ends[0]);
        return new Instant[] {from, read(field, what, ends[1], from.atZone(zone).toLocalDate())};
    }

    /** An instant as it would be typed. */
    public String write(Instant at) {
        return write(at, date);
    }

    /** A span as it would be typed. */
    public String write(Instant from, Instant until) {
        return write(from) + " to " + write(until, from.atZone(zone).toLocalDate());
    }

    private String write(Instant at, LocalDate bareDay) {
        ZonedDateTime local = at.atZone(zone);
        boolean twice = zone.getRules().getValidOffsets(local.toLocalDateTime()).size() > 1;
        String clock = CLOCK.format(local) + (twice ? local.getOffset() : "");
        LocalDate day = local.toLocalDate();
        if (day.equals(bareDay)) {
            return clock;
        }
        if (day.equals(date.minusDays(1))) {
            return "day before " + clock;
        }
        return (day.equals(date.plusDays(1)) ? "day after" : day) + " " + clock;
    }

    private LocalDate day(@Nullable String word, LocalDate bareDay) {
        if (word == null) {
            return bareDay;
        }
        return switch (word.toLowerCase(Locale.ROOT)) {
            case "day before" -> date.minusDays(1);
            case "day after" -> date.plusDays(1);
            default -> LocalDate.parse(word);
        };
    }

    private Instant instant(String field, String what, LocalDateTime local, @Nullable String offset) {
        List<ZoneOffset> valid = zone.getRules().getValidOffsets(local);
        String shown = CLOCK.format(local) + " on " + local.toLocalDate();
        if (valid.isEmpty()) {
            var change = zone.getRules().getTransition(local);
            throw new InputException(
                    field,
                    what + " is " + shown + ", which does not exist: the clock goes from "
                            + CLOCK.format(change.getDateTimeBefore()) + " to "
                            + CLOCK.format(change.getDateTimeAfter())
                            + ". Write " + CLOCK.format(change.getDateTimeAfter()) + " or later.");
        }
        if (offset != null) {
            ZoneOffset said = ZoneOffset.of(offset);
            if (!valid.contains(said)) {
                throw new InputException(
                        field,
                        what + " is " + shown + " at " + said + "; expected " + valid.get(0)
                                + ". Leave the offset out.");
            }
            return local.toInstant(said);
        }
        if (valid.size() > 1) {
            throw new InputException(
                    field,
                    what + " is " + shown + ", which comes twice as the clock is put back. Write "
                            + CLOCK.format(local) + valid.get(0) + " for the first or " + CLOCK.format(local)
                            + valid.get(1) + " for the second.");
        }
        return local.toInstant(valid.get(0));
    }
}
