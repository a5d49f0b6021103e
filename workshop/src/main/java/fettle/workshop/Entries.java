package fettle.workshop;

import fettle.book.record.Row;
import fettle.book.record.Shape;
import fettle.book.record.Shapes;
import fettle.book.store.Stored;
import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.Check;
import fettle.engine.pack.Pack;
import fettle.engine.pack.Run;
import fettle.engine.units.Fault;
import fettle.engine.units.InputException;
import fettle.workshop.EntryPreview.Correction;
import fettle.workshop.EntryPreview.LineProblem;
import fettle.workshop.entry.Entry;
import fettle.workshop.entry.EntryLine;
import fettle.workshop.entry.KnownKit;
import fettle.workshop.entry.LineReading;
import fettle.workshop.entry.Problem;
import fettle.workshop.spelling.Spelling;
import java.util.List;
import java.util.function.BiFunction;

/** Takes checks, charges and runs. Each is journalled and can be undone. */
public final class Entries {
    private final Ledger ledger;
    private final Shelf<Pack> packs;
    private final KnownKit kit;

    Entries(Ledger ledger, Shelf<Pack> packs, KnownKit kit) {
        this.ledger = ledger;
        this.packs = packs;
        this.kit = kit;
    }

    /** What would be saved for an entry line, e.g. {@code P07 3.84 3.83 3.85 3.84 21C rest 2h}. Saves nothing. */
    public EntryPreview preview(String line) {
        LineReading reading = read(line);
        return new EntryPreview(
                line,
                reading.packTag(),
                reading.understood(),
                reading.problems().stream()
                        .map(problem -> new LineProblem(problem.column(), problem.part(), problem.sentence()))
                        .toList(),
                reading.questions(),
                corrections(line, reading));
    }

    /** An unknown tag is a slip of the keyboard where a known one is near. */
    private List<Correction> corrections(String line, LineReading reading) {
        if (reading.packTag() != null || reading.problems().isEmpty()) {
            return List.of();
        }
        Problem problem = reading.problems().get(0);
        int start = problem.column() - 1;
        int end = start + problem.part().length();
        if (end > line.length()) {
            return List.of();
        }
        return kit.tagsNear(problem.part()).stream()
                .filter(tag -> Spelling.near(problem.part(), tag))
                .map(tag -> new Correction(tag, line.substring(0, start) + tag + line.substring(end)))
                .toList();
    }

    /** Saves an entry line; throws {@link InputException} with every problem if it cannot be. */
    public JournalEntry enter(String line) {
        LineReading reading = read(line);
        String tag = reading.packTag();
        Entry entry = reading.entry();
        if (tag == null || entry == null) {
            throw new InputException(
                    reading.problems().stream().map(Entries::fault).toList());
        }
        if (entry instanceof Entry.OfCharge charge) {
            return addCharge(tag, charge.charge(), line);
        }
        if (entry instanceof Entry.OfRun run) {
            return addRun(tag, run.run(), line);
        }
        return addCheck(tag, ((Entry.OfCheck) entry).check(), line);
    }

    private LineReading read(String line) {
        return EntryLine.read(line, kit, ledger.clock());
    }

    private static Fault fault(Problem problem) {
        return new Fault("line", "column " + problem.column() + ": " + problem.sentence());
    }

    /** Saves a check; {@code typed} is the input as typed, kept for ever. */
    public JournalEntry addCheck(String packTag, Check check, String typed) {
        return add(packTag, Shapes.CHECK, check, typed, EntryWords::check);
    }

    /** Saves a charge as noted by hand. */
    public JournalEntry addCharge(String packTag, ChargeRecord charge, String typed) {
        return add(packTag, Shapes.CHARGE, charge, typed, EntryWords::charge);
    }

    /** Saves a run. */
    public JournalEntry addRun(String packTag, Run run, String typed) {
        return add(packTag, Shapes.RUN, run, typed, EntryWords::run);
    }

    private <E> JournalEntry add(
            String packTag, Shape<E> shape, E entry, String typed, BiFunction<String, E, String> words) {
        return ledger.together(() -> {
            Stored<Pack> pack = packs.stored(packTag);
            String tag = pack.item().tag();
            Row beside = Row.empty().with("pack_id", pack.id()).with("typed", typed);
            return Ledger.fresh(
                    ledger.book().items(shape).add(entry, beside, ledger.note(words.apply(tag, entry), tag)));
        });
    }
}
