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
        int first = at;
        int point = -1;
        long digits = 0; // overflows only where there are too many of them, which is asked below
        for (; at < end; at++) {
            int digit = text[at] - '0';
            if (digit >= 0 && digit <= 9) {
                digits = digits * 10 + digit;
            } else if (text[at] == decimal && point < 0) {
                point = at;
            } else {
                return slow(new String(text, from, end - from), decimal);
            }
        }
        int count = end - first - (point < 0 ? 0 : 1);
        if (count == 0 || count > MOST_DIGITS) {
            return slow(new String(text, from, end - from), decimal);
        }
        // Both are whole numbers a double holds exactly, so one division rounds as it should (Clinger 1990).
        double value = point < 0 ? digits : digits / TENS[end - 1 - point];
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
