package fettle.engine.units;

import java.util.regex.Pattern;

/** Text that may be shown: typed text can hold characters that steer a terminal or make words read backwards. */
public final class Printable {
    private static final char REPLACEMENT = '\uFFFD';

    /** Control characters but tab and line end, and the overrides of writing direction (Unicode Annex 9, 2.1 and 2.2). */
    private static final Pattern STEERING =
            Pattern.compile("[\\x00-\\x08\\x0B-\\x1F\\x7F-\\x9F\\u202A-\\u202E\\u2066-\\u2069]");

    private Printable() {}

    /** The text with each such character replaced by U+FFFD. */
    public static String of(String text) {
        return STEERING.matcher(text).replaceAll(String.valueOf(REPLACEMENT));
    }
}
