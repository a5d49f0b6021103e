package fettle.workshop.entry;

import java.util.regex.Pattern;

/** Figures with a colon: a time of day to some, a length of time to others. */
final class ColonTime {
    private static final Pattern TIME = Pattern.compile("\\d{1,2}:\\d{2}(?::\\d{2})?");

    private ColonTime() {}

    static boolean isTime(Word word) {
        return !word.quoted() && TIME.matcher(word.text()).matches();
    }

    /** Why it is not taken where it may be a time of day or a length of time, with every way to write it. */
    static String manyWays(Word word) {
        return told(word) + "at " + word.text() + " for a time of day, or for how long " + lengths(word) + ".";
    }

    /** Why it is not taken as a length of time, with both ways to write it. */
    static String twoLengths(Word word) {
        return told(word) + lengths(word) + ".";
    }

    private static String told(Word word) {
        return "\"" + word.text() + "\" can be read in more than one way. Write ";
    }

    private static String lengths(Word word) {
        String[] parts = word.text().split(":");
        return parts[0] + "h" + parts[1] + " or " + parts[0] + "min" + parts[1];
    }
}
