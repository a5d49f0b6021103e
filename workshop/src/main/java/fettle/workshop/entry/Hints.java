package fettle.workshop.entry;

import fettle.engine.units.Figure;
import fettle.workshop.spelling.Spelling;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Why a word is not understood and how to mend it, told as closely as the word allows. */
final class Hints {
    private static final Pattern DATE_AND_TIME = Pattern.compile("\\d{4}-\\d{2}-\\d{2}T\\d{1,2}:\\d{2}.*");
    private static final Pattern TWO_POINTS = Pattern.compile("\\d*[.,]{2,}\\d+.*");
    private static final Pattern FIGURES_TOGETHER = Pattern.compile("\\d+[.,]?\\d*([.,;/|+]+\\d+)+[vV]?");
    private static final Pattern LETTER_FOR_DIGIT = Pattern.compile("(?=.*\\d)[\\doOlI]+[.,]?[\\doOlI]*[vV]?");
    private static final Map<String, String> WORDS = words();

    private Hints() {}

    /** True for a word people write that a line does not read, so that it is no mistyped name. */
    static boolean isKnown(Word word) {
        return !word.quoted() && WORDS.containsKey(word.text().toLowerCase(Locale.ROOT));
    }

    /**
     * @param keywords the words that can stand here
     * @param expected what can stand here, for a sentence
     */
    static String unknown(Word word, List<String> keywords, String expected) {
        String text = word.text();
        String hint = Optional.ofNullable(WORDS.get(text.toLowerCase(Locale.ROOT)))
                .or(() -> figures(text, expected))
                .or(() -> Spelling.meant(text, keywords)
                        .map(meant -> "is not understood here. Did you mean " + meant + "?"))
                .orElse("is not understood here. Expected " + expected + ".");
        return "\"" + text + "\" " + hint;
    }

    private static Optional<String> figures(String text, String expected) {
        if (DATE_AND_TIME.matcher(text).matches()) {
            return Optional.of("has its day and time in one. Put a space for the T.");
        }
        if (TWO_POINTS.matcher(text).matches()) {
            return Optional.of("has two decimal points side by side. Write one.");
        }
        if (FIGURES_TOGETHER.matcher(text).matches()) {
            return Optional.of("has figures run together. Put a space between readings, e.g. 3.84 3.83.");
        }
        if (LETTER_FOR_DIGIT.matcher(text).matches()) {
            return Optional.of("has a letter among its digits. Write 0 for o and 1 for l.");
        }
        return Figure.of(text).map(figure -> unit(figure, expected));
    }

    private static String unit(Figure figure, String expected) {
        if (figure.unit().matches("[°º˚]")) {
            return "has no scale. Write " + figure.number() + "C or " + figure.number() + "F.";
        }
        return figure.unit().isEmpty()
                ? "has nothing to say what it is. Expected " + expected + "."
                : "has the unit \"" + figure.unit() + "\", which is not read here. Expected " + expected + ".";
    }

    private static Map<String, String> words() {
        Map<String, String> words = new HashMap<>();
        List.of("no", "not", "none", "without", "never", "ok", "okay", "fine", "good")
                .forEach(word -> words.put(
                        word,
                        "is not read: swelling, damage and smell are given only where they are there. Leave out what is "
                                + "all right, or put it behind note."));
        List.of("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
                .forEach(word -> words.put(
                        word, "is not read as a day. Write it year-month-day, e.g. 2026-06-01, or yesterday."));
        List.of("am", "pm").forEach(word -> words.put(word, "is not read. Write the time of day from 00:00 to 23:59."));
        words.put("full", "says no figure. Write the volts it ended at, e.g. to 16.80V.");
        words.put("empty", "says no figure. Write what remained, e.g. left 10%.");
        words.put("used", "is not kept: give what remained, e.g. left 30%, and the put-back once it is charged again.");
        return Map.copyOf(words);
    }
}
