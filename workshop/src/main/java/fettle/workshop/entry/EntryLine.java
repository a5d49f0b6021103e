package fettle.workshop.entry;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Reads an entry line: the pack's tag, then {@code charged …}, {@code ran …}, or the readings of a check.
 *
 * <pre>
 * P07 3.84 3.83 3.85 3.84 21C rest 2h ir 2.1 2.2 2.0 2.4 by charger
 * P07 pack 15.36V swollen note found under the bench
 * P07 charged 3100mAh to 16.80V 31C yesterday 18:30
 * P07 ran Heron 7.5min left 30% left 15.2V 41C at 2026-11-20 18:30
 * </pre>
 */
public final class EntryLine {
    /** Most characters a line can have. */
    public static final int LONGEST = 1_000;

    private static final int SHOWN_OF_TOO_LONG = 20;

    private EntryLine() {}

    /** What is made of a line now. Never throws for anything typed: what cannot be read is a problem in the answer. */
    public static LineReading read(String line, KnownKit kit, Clock clock) {
        Remarks remarks = new Remarks();
        if (line.length() > LONGEST) {
            Word beyond = new Word(LONGEST + 1, excerpt(line), "", true);
            remarks.problem(beyond, "the line has " + line.length() + " characters; at most " + LONGEST + " are read.");
            return reading(null, null, remarks);
        }
        List<Word> all = Lexer.words(line, remarks);
        if (all.isEmpty()) {
            remarks.problem(
                    new Word(1, "", "", false), "the line is empty. Begin with the pack's tag, e.g. P07 3.84 3.83.");
            return reading(null, null, remarks);
        }
        return read(new Words(all), kit, clock, remarks);
    }

    private static LineReading read(Words words, KnownKit kit, Clock clock, Remarks remarks) {
        Word tag = words.next();
        KnownPack pack = pack(tag, kit, remarks).orElse(null);
        Frame frame = new Frame(pack, tag, clock, remarks);
        Entry entry = entry(frame, words, kit).orElse(null);
        return reading(pack == null ? null : pack.pack().tag(), entry, remarks);
    }

    private static Optional<Entry> entry(Frame frame, Words words, KnownKit kit) {
        if (words.peek().filter(word -> word.is("charged")).isPresent()) {
            frame.remarks().understood("a charge");
            words.next();
            return new ChargeLine(frame, words).read().map(Entry.OfCharge::new);
        }
        if (words.peek().filter(word -> word.is("ran")).isPresent()) {
            frame.remarks().understood("a run");
            return new RunLine(frame, words, kit).read(words.next()).map(Entry.OfRun::new);
        }
        frame.remarks().understood("a check");
        return new CheckLine(frame, words).read().map(Entry.OfCheck::new);
    }

    private static Optional<KnownPack> pack(Word tag, KnownKit kit, Remarks remarks) {
        Optional<KnownPack> known = kit.pack(tag.text());
        if (known.isEmpty()) {
            List<String> near = kit.tagsNear(tag.text());
            remarks.problem(
                    tag,
                    "there is no pack \"" + tag.text() + "\" in this book. "
                            + (near.isEmpty()
                                    ? "It has no pack yet: add one first."
                                    : "Begin the line with a pack's tag; nearest: " + String.join(", ", near) + "."));
            return known;
        }
        if (known.get().retired()) {
            remarks.problem(
                    tag,
                    known.get().pack().tag() + " is retired, so nothing is entered for it. Restore it first if it is "
                            + "in use again.");
        }
        return known;
    }

    private static LineReading reading(@Nullable String packTag, @Nullable Entry entry, Remarks remarks) {
        return new LineReading(packTag, entry, remarks.understood(), remarks.problems(), remarks.questions());
    }

    private static String excerpt(String line) {
        return line.substring(LONGEST, Math.min(line.length(), LONGEST + SHOWN_OF_TOO_LONG));
    }
}
