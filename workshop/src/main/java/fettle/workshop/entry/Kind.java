package fettle.workshop.entry;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a line tells of, with the words that say so. */
enum Kind {
    CHECK("a check", List.of("check", "checked")),
    CHARGE("a charge", List.of("charged", "charge")),
    RUN("a run", List.of("ran", "run", "flew", "drove", "sailed"));

    private final String phrase;
    private final List<String> words;

    Kind(String phrase, List<String> words) {
        this.phrase = phrase;
        this.words = words;
    }

    /** The kind a word names; empty if it names none. */
    static Optional<Kind> of(Word word) {
        return Arrays.stream(values())
                .filter(kind ->
                        !word.quoted() && kind.words.contains(word.text().toLowerCase(Locale.ROOT)))
                .findFirst();
    }

    String phrase() {
        return phrase;
    }
}
