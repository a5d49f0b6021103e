package fettle.workshop.entry;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** The words of a line still to be read. Not thread-safe. */
final class Words {
    private final String line;
    private final List<Word> all;
    private int at;

    /** @param all the words of the line, in order */
    Words(String line, List<Word> all) {
        this.line = line;
        this.all = all;
    }

    /** All from one word to a later one, as one quoted word with everything that stands between them. */
    Word span(Word first, Word last, String text) {
        int end = last.column() - 1 + last.part().length();
        return new Word(first.column(), line.substring(first.column() - 1, end), text, true);
    }

    boolean hasNext() {
        return at < all.size();
    }

    Word next() {
        return all.get(at++);
    }

    Optional<Word> peek() {
        return peek(0);
    }

    /** The word that many behind the next one. */
    Optional<Word> peek(int ahead) {
        return at + ahead < all.size() ? Optional.of(all.get(at + ahead)) : Optional.empty();
    }

    boolean nextIs(Predicate<Word> wanted) {
        return peek().filter(wanted).isPresent();
    }

    boolean nextIs(String keyword) {
        return nextIs(word -> word.is(keyword));
    }

    /** The next word, taken, if it is wanted. */
    Optional<Word> nextIf(Predicate<Word> wanted) {
        return nextIs(wanted) ? Optional.of(next()) : Optional.empty();
    }

    /** Passes over all words left. */
    void skipAll() {
        at = all.size();
    }

    /** Passes over words. */
    void skip(int words) {
        at += words;
    }
}
