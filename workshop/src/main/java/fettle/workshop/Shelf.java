package fettle.workshop;

import fettle.book.record.Row;
import fettle.book.record.Shape;
import fettle.book.store.Items;
import fettle.book.store.Note;
import fettle.book.store.Stored;
import fettle.engine.units.InputException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.function.Consumer;

/** One kind of kit: packs, craft, chargers or sources. Every change is journalled and can be undone. Thread-safe. */
public final class Shelf<T> {
    private final Ledger ledger;
    private final Items<T> items;
    private final KitWords<T> words;
    private final Consumer<T> admission;
    private final BinaryOperator<T> keptThroughEdits;

    /** @param admission throws {@link InputException} where an item must not be kept */
    Shelf(Ledger ledger, Shape<T> shape, KitWords<T> words, Consumer<T> admission) {
        this(ledger, shape, words, admission, (present, edited) -> edited);
    }

    /** @param keptThroughEdits puts into an edited item what no form shows of the present one */
    Shelf(Ledger ledger, Shape<T> shape, KitWords<T> words, Consumer<T> admission, BinaryOperator<T> keptThroughEdits) {
        this.ledger = ledger;
        this.items = ledger.book().items(shape);
        this.words = words;
        this.admission = admission;
        this.keptThroughEdits = keptThroughEdits;
    }

    /** All of it, retired included, by name. */
    public List<Registered<T>> list() {
        return ledger.use(items::all).stream()
                .map(this::registered)
                .sorted(Comparator.comparing(Registered::name, NameOrder.NATURAL))
                .toList();
    }

    /** The item of that name in any case; throws {@link UnknownNameException} where there is none. */
    public Registered<T> find(String name) {
        return registered(stored(name));
    }

    /** The item of that name in any case; empty where there is none. */
    Optional<Registered<T>> named(String name) {
        return ledger.use(() -> items.named(name)).map(this::registered);
    }

    public JournalEntry add(T item) {
        admission.accept(item);
        String name = words.name().apply(item);
        String sentence = "added " + words.noun() + " " + name + " ("
                + words.description().apply(item) + ")";
        Row inUse = Row.empty().withFlag("retired", false).with("retired_reason", "");
        return ledger.use(() -> Ledger.fresh(items.add(item, inUse, ledger.note(sentence, name))));
    }

    /** Replaces the item of that name; its name may change too, and its history follows. */
    public JournalEntry edit(String name, T edited) {
        admission.accept(edited);
        return ledger.together(() -> {
            Stored<T> present = stored(name);
            T item = keptThroughEdits.apply(present.item(), edited);
            List<String> changed = ChangedParts.between(present.row(), items.rowOf(item));
            if (changed.isEmpty()) {
                throw new InputException(
                        "name", words.noun() + " " + name + " is unchanged: every field is as it was.");
            }
            return Ledger.fresh(items.replace(present.id(), item, edited(present, item, changed)));
        });
    }

    public JournalEntry retire(String name, String reason) {
        String why = reason.isBlank() ? "" : ": " + reason.strip();
        return mark(name, true, reason.strip(), "retired", why);
    }

    public JournalEntry restore(String name) {
        return mark(name, false, "", "brought back", "");
    }

    private JournalEntry mark(String name, boolean retired, String reason, String verb, String why) {
        return ledger.together(() -> {
            Stored<T> present = stored(name);
            String known = words.name().apply(present.item());
            if (present.retired() == retired) {
                throw new InputException(
                        "name",
                        words.noun() + " " + known + (retired ? " is retired already." : " is in use already."));
            }
            Row mark = Row.empty().withFlag("retired", retired).with("retired_reason", reason);
            String sentence = verb + " " + words.noun() + " " + known + why;
            return Ledger.fresh(items.mark(present.id(), mark, ledger.note(sentence, known)));
        });
    }

    private Note edited(Stored<T> present, T item, List<String> changed) {
        String before = words.name().apply(present.item());
        String after = words.name().apply(item);
        String renamed = before.equals(after) ? "" : " (now " + after + ")";
        return ledger.note(
                "changed " + words.noun() + " " + before + renamed + ": " + String.join(", ", changed), after);
    }

    Stored<T> stored(String name) {
        return ledger.use(() -> items.named(name))
                .orElseThrow(() -> NearNames.unknown(
                        words, name, list().stream().map(Registered::name).toList()));
    }

    private Registered<T> registered(Stored<T> stored) {
        return new Registered<>(words.name().apply(stored.item()), stored.item(), stored.retired());
    }
}
