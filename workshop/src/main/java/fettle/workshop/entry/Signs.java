package fettle.workshop.entry;

import fettle.engine.pack.Check;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** What was seen or smelt of a pack. Not thread-safe. */
final class Signs {
    /** The words that a slip of the keyboard is told to mean. */
    static final List<String> KEYWORDS = List.of("swollen", "damaged", "smells");

    private static final Map<String, Check.Sign> SPELLINGS = Map.ofEntries(
            Map.entry("swollen", Check.Sign.SWELLING),
            Map.entry("swelling", Check.Sign.SWELLING),
            Map.entry("puffed", Check.Sign.SWELLING),
            Map.entry("puffy", Check.Sign.SWELLING),
            Map.entry("damaged", Check.Sign.DAMAGE),
            Map.entry("damage", Check.Sign.DAMAGE),
            Map.entry("dented", Check.Sign.DAMAGE),
            Map.entry("torn", Check.Sign.DAMAGE),
            Map.entry("smells", Check.Sign.SMELL),
            Map.entry("smell", Check.Sign.SMELL),
            Map.entry("smelly", Check.Sign.SMELL));

    private final Set<Check.Sign> seen = new TreeSet<>();

    static boolean isSign(Word word) {
        return sign(word).isPresent();
    }

    void add(Word word, Remarks remarks) {
        sign(word).ifPresent(sign -> {
            if (seen.add(sign)) {
                remarks.understood(sign.label());
            } else {
                remarks.problem(word, "\"" + word.text() + "\" is given already. Take one away.");
            }
        });
    }

    Set<Check.Sign> seen() {
        return Set.copyOf(seen);
    }

    private static Optional<Check.Sign> sign(Word word) {
        return word.quoted()
                ? Optional.empty()
                : Optional.ofNullable(SPELLINGS.get(word.text().toLowerCase(Locale.ROOT)));
    }
}
