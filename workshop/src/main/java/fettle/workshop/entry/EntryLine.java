package fettle.workshop.entry;

import java.time.Clock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Reads an entry line: the pack's tag, what was done with it ({@code check} may be left out), then the particulars in
 * any order.
 *
 * <pre>
 * P07 3.84 3.83 3.85 3.84 21C rest 2h ir 2.1 2.2 2.0 2.4 by charger
 * P07 15.36V pack swollen note found under the bench
 * P07 charged 3100mAh to 16.80V 31C yesterday 18:30
 * P07 ran Heron 7.5min left 30% 41C at 2026-11-20 18:30
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
            remarks.problem(
                    beyond,
                    "the line has " + line.length() + " characters; at most " + LONGEST
                            + " are read. Enter one pack a line.");
            return reading(null, null, remarks);
        }
        Words words = new Words(line, Lexer.words(line, remarks));
        if (!words.hasNext()) {
            remarks.problem(new Word(1, "", "", false), "the line is empty. " + Tag.BEGIN);
            return reading(null, null, remarks);
        }
        return read(words, kit, clock, remarks);
    }

    private static LineReading read(Words words, KnownKit kit, Clock clock, Remarks remarks) {
        Word first = words.next();
        Optional<Kind> leading = Kind.of(first);
        if (leading.isPresent() && !words.hasNext()) {
            remarks.problem(first, "which pack is it? " + Tag.BEGIN);
            return reading(null, null, remarks);
        }
        Word tag = leading.isPresent() ? words.next() : first;
        KnownPack pack = Tag.pack(tag, kit, remarks).orElse(null);
        Optional<Word> told = leading.isPresent()
                ? Optional.of(first)
                : words.nextIf(word -> Kind.of(word).isPresent());
        Kind kind = told.flatMap(Kind::of).orElse(Kind.CHECK);
        remarks.understood(kind.phrase());
        Frame frame = new Frame(pack, tag, clock, remarks);
        Entry entry = entry(kind, told.orElse(tag), frame, words, kit).orElse(null);
        return reading(pack == null ? null : pack.pack().tag(), entry, remarks);
    }

    private static Optional<Entry> entry(Kind kind, Word told, Frame frame, Words words, KnownKit kit) {
        return switch (kind) {
            case CHECK -> new CheckLine(frame, words).read().map(Entry.OfCheck::new);
            case CHARGE -> new ChargeLine(frame, words).read().map(Entry.OfCharge::new);
            case RUN -> new RunLine(frame, words, kit).read(told).map(Entry.OfRun::new);
        };
    }

    private static LineReading reading(@Nullable String packTag, @Nullable Entry entry, Remarks remarks) {
        return new LineReading(packTag, entry, remarks.understood(), remarks.problems(), remarks.questions());
    }

    private static String excerpt(String line) {
        return line.substring(LONGEST, Math.min(line.length(), LONGEST + SHOWN_OF_TOO_LONG));
    }
}
