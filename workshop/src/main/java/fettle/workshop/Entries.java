package fettle.workshop;

import fettle.book.record.Row;
import fettle.book.record.Shape;
import fettle.book.record.Shapes;
import fettle.book.store.Stored;
import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.Check;
import fettle.engine.pack.Pack;
import fettle.engine.pack.Run;
import java.util.function.BiFunction;

/** Takes checks, charges and runs. Each is journalled and can be undone. */
public final class Entries {
    private final Ledger ledger;
    private final Shelf<Pack> packs;

    Entries(Ledger ledger, Shelf<Pack> packs) {
        this.ledger = ledger;
        this.packs = packs;
    }

    /** What would be saved for an entry line, e.g. {@code P07 3.84 3.83 3.85 3.84 21C rest 2h}. Saves nothing. */
    public EntryPreview preview(String line) {
        throw new UnsupportedOperationException();
    }

    /** Saves an entry line; throws {@link fettle.engine.units.InputException} with every problem if it cannot be. */
    public JournalEntry enter(String line) {
        throw new UnsupportedOperationException();
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
