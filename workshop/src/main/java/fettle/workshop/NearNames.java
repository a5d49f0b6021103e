package fettle.workshop;

import fettle.workshop.spelling.Spelling;
import java.util.List;

/** Which known names a mistyped one is near to. */
final class NearNames {
    private static final int MOST_SHOWN = 3;

    private NearNames() {}

    /** A refusal of an unknown name that says which are near. */
    static UnknownNameException unknown(KitWords<?> words, String name, List<String> known) {
        if (known.isEmpty()) {
            return new UnknownNameException(
                    name + " is not in this book, which has no " + words.noun() + " yet. Add it first.");
        }
        return new UnknownNameException(name + " is not in this book; nearest " + words.nameNoun() + ": "
                + String.join(", ", nearest(name, known)) + ".");
    }

    static List<String> nearest(String name, List<String> known) {
        return Spelling.nearest(name, known, MOST_SHOWN);
    }
}
