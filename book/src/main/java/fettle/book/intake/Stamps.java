package fettle.book.intake;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;

/** Takes time stamps apart. */
final class Stamps {
    static final double DAY_SECONDS = 86_400;

    private Stamps() {}

    /** Seconds of a stamp: since midnight for a clock, since 1970-01-01 UTC (or local) for a date. */
    static double seconds(String field, ColumnUnit format) {
        String text = field.strip();
        if (format == ColumnUnit.CLOCK) {
            return clock(text);
        }
        int split = dateEnd(text);
        double day = day(text.substring(0, split), format);
        String rest = text.substring(split).strip();
        rest = rest.startsWith("T") || rest.startsWith("t") ? rest.substring(1) : rest;
        int zone = zoneStart(rest);
        double clock = rest.isEmpty() ? 0 : clock(rest.substring(0, zone).strip());
        return day * DAY_SECONDS + clock - zoneSeconds(rest.substring(zone).strip());
    }

    /** Whether a dated stamp says its zone. */
    static boolean hasZone(String field) {
        String text = field.strip();
        return zoneStart(text.substring(Math.min(text.length(), dateEnd(text) + 1))) + dateEnd(text) + 1
                < text.length();
    }

    /** Days since 1970-01-01. */
    static double day(String date, ColumnUnit format) {
        String[] parts = date.strip().split("[-./]");
        if (parts.length != 3) {
            throw new NumberFormatException(date);
        }
        int first = Integer.parseInt(parts[0]);
        int second = Integer.parseInt(parts[1]);
        int third = Integer.parseInt(parts[2]);
        try {
            if (parts[0].length() == 4) {
                return LocalDate.of(first, second, third).toEpochDay();
            }
            int year = third < 100 ? 2000 + third : third;
            return format == ColumnUnit.DATE_TIME_MONTH_FIRST
                    ? LocalDate.of(year, first, second).toEpochDay()
                    : LocalDate.of(year, second, first).toEpochDay();
        } catch (DateTimeException wrong) {
            throw new NumberFormatException(date);
        }
    }

    /** {@code h:mm:ss.fff}, {@code mm:ss} or {@code hh:mm:ss:mmm}, perhaps with am or pm. */
    static double clock(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        boolean afternoon = lower.endsWith("pm");
        boolean morning = lower.endsWith("am");
        String[] parts = (afternoon || morning
                        ? lower.substring(0, lower.length() - 2).strip()
                        : lower)
                .replace(',', '.')
                .split(":", -1);
        if (parts.length < 2 || parts.length > 4) {
            throw new NumberFormatException(text);
        }
        double thousandths = parts.length == 4 ? whole(parts[3]) / 1000 : 0;
        boolean hours = parts.length > 2;
        double hour = hours ? whole(parts[0]) : 0;
        if (afternoon || morning) {
            hour = hour % 12 + (afternoon ? 12 : 0);
        }
        double minute = whole(parts[hours ? 1 : 0]);
        double second = NumberText.read(parts[hours ? 2 : 1], '.') + thousandths;
        if (hours && minute >= 60 || !(second >= 0 && second < 61)) {
            throw new NumberFormatException(text);
        }
        return (hour * 60 + minute) * 60 + second;
    }

    private static double whole(String digits) {
        if (!digits.matches("\\d{1,6}")) {
            throw new NumberFormatException(digits);
        }
        return Integer.parseInt(digits);
    }

    private static int dateEnd(String text) {
        int at = 0;
        while (at < text.length() && (Character.isDigit(text.charAt(at)) || "-./".indexOf(text.charAt(at)) >= 0)) {
            at++;
        }
        return at;
    }

    private static int zoneStart(String clock) {
        for (int at = 0; at < clock.length(); at++) {
            char each = clock.charAt(at);
            if (each == 'Z' || each == 'z' || each == '+' || each == '-') {
                return at;
            }
        }
        return clock.length();
    }

    private static double zoneSeconds(String zone) {
        if (zone.isEmpty() || zone.equalsIgnoreCase("Z")) {
            return 0;
        }
        if (!zone.matches("[+-]\\d\\d(:?\\d\\d)?")) {
            throw new NumberFormatException(zone);
        }
        int hours = Integer.parseInt(zone.substring(1, 3));
        int minutes = zone.length() > 3 ? Integer.parseInt(zone.substring(zone.length() - 2)) : 0;
        return (zone.charAt(0) == '-' ? -60.0 : 60.0) * (hours * 60 + minutes);
    }
}
