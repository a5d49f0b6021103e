package fettle.workshop.entry;

import fettle.engine.pack.Craft;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;

/** Finds the name of a craft among words: a registered name may have spaces and figures, quoted or not. */
final class CraftWords {
    private static final int MOST_WORDS_OF_A_NAME = 6;

    private final KnownKit kit;
    private final Remarks remarks;

    CraftWords(KnownKit kit, Remarks remarks) {
        this.kit = kit;
        this.remarks = remarks;
    }

    /** The craft whose registered name the words begin with, the longest such name first; its words are taken. */
    Optional<Craft> known(Word first, Words words) {
        for (int more = MOST_WORDS_OF_A_NAME - 1; more >= 0; more--) {
            boolean enough = more == 0 || words.peek(more - 1).isPresent();
            Optional<Craft> craft = enough ? kit.craft(joined(first, words, more)) : Optional.empty();
            if (craft.isPresent()) {
                words.skip(more);
                return craft;
            }
        }
        return Optional.empty();
    }

    /** Tells that there is no such craft; the words of the mistyped name, up to the next thing of a run, are taken. */
    void unknown(Word first, Words words) {
        StringJoiner name = new StringJoiner(" ").add(first.text());
        Word last = first;
        while (!first.quoted() && words.nextIs(CraftWords::isName)) {
            last = words.next();
            name.add(last.text());
        }
        List<String> near = kit.craftNear(name.toString());
        remarks.problem(
                words.span(first, last, name.toString()),
                "there is no craft \"" + name + "\" in this book. "
                        + (near.isEmpty()
                                ? "It has no craft yet: add it first, or leave it out."
                                : "Nearest names: " + String.join(", ", near) + ". Add it first if it is new."));
    }

    private static String joined(Word first, Words words, int more) {
        StringJoiner name = new StringJoiner(" ").add(first.text());
        for (int ahead = 0; ahead < more; ahead++) {
            words.peek(ahead).ifPresent(word -> name.add(word.text()));
        }
        return name.toString();
    }

    private static boolean isName(Word word) {
        return !(Frame.knows(word) || RunLine.knows(word) || Quantities.isNumber(word));
    }
}
