package fettle.book.intake;

import java.util.Locale;

/** Reads a number as loggers write it, quickly. */
final class NumberText {
    private static final double[] TENS = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18
    };

    /** As many digits as a double holds exactly. */
    private static final int MOST_DIGITS = 15;

    private NumberText() {}

    /**
     * A number, or {@code NaN} where the field says there is none.
     *
     * @param decimal the decimal sign, point or comma
     * @throws NumberFormatException if it is neither
     */
    static double read(String field, char decimal) {
        return read(field.toCharArray(), 0, field.length(), decimal);
    }

    /** The same of characters {@code begin} (inclusive) to {@code stop} (exclusive). */
    static double read(char[] text, int begin, int stop, char decimal) {
        int at = begin;
        int end = stop;
        while (at < end && text[at] <= ' ') {
            at++;
        }
        while (end > at && text[end - 1] <= ' ') {
            end--;
        }
        int from = at;
        boolean negative = at < end && (text[at] == '-' || text[at] == '\u2212');
        if (at < end && (negative || text[at] == '+')) {
            at++;
        }
        long digits = 0;
        int count = 0;
        int decimals = -1;
        for (; at < end && count <= MOST_DIGITS; at++) {
            char each = text[at];
            if (each >= '0' && each <= '9') {
                digits = digits * 10 + (each - '0');
                count++;
                decimals += decimals >= 0 ? 1 : 0;
            } else if (each == decimal && decimals < 0) {
                decimals = 0;
            } else {
                return slow(new String(text, from, end - from), decimal);
            }
        }
        if (count == 0 || count > MOST_DIGITS) {
            return slow(new String(text, from, end - from), decimal);
        }
        double value = digits / TENS[Math.max(0, decimals)];
        return negative ? -value : value;
    }

    /** Whether the field holds a number or says that there is none. */
    static boolean isNumber(String field, char decimal) {
        try {
            return !Double.isNaN(read(field, decimal));
        } catch (NumberFormatException other) {
            return false;
        }
    }

    private static double slow(String text, char decimal) {
        if (isMissing(text)) {
            return Double.NaN;
        }
        char grouping = decimal == ',' ? '.' : ',';
        String plain = text.replace('\u2212', '-').replace("\u00A0", "").replace("'", "");
        if (decimal == ',') {
            plain = plain.indexOf(',') >= 0 ? plain.replace(".", "").replace(',', '.') : plain;
        } else if (plain.indexOf(grouping) >= 0) {
            if (!plain.matches("[-+]?\\d{1,3}((,\\d{3})+\\.\\d*|(,\\d{3}){2,})")) {
                throw new NumberFormatException(text);
            }
            plain = plain.replace(",", "");
        }
        if (!plain.matches("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d+)?")) {
            throw new NumberFormatException(text);
        }
        double value = Double.parseDouble(plain);
        return Double.isInfinite(value) ? Double.NaN : value;
    }

    private static boolean isMissing(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "",
                    "nan",
                    "-nan",
                    "null",
                    "none",
                    "n/a",
                    "na",
                    "inf",
                    "-inf",
                    "+inf",
                    "infinity",
                    "-infinity",
                    "-",
                    "--",
                    "---",
                    "?",
                    "#n/a",
                    "#div/0!",
                    "ovf",
                    "*",
                    "**",
                    "***",
                    "****" -> true;
            default -> false;
        };
    }
}
