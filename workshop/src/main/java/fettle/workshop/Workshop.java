package fettle.workshop;

import fettle.book.archive.Restore;
import fettle.book.record.Shapes;
import fettle.book.store.Book;
import fettle.engine.control.servo.Servo;
import fettle.engine.outing.Outing;
import fettle.engine.pack.Craft;
import fettle.engine.pack.Pack;
import fettle.engine.rule.RuleSet;
import fettle.engine.supply.Charger;
import fettle.engine.supply.Source;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.function.Supplier;

/** One open book with every use case. Thread-safe; close it to give the book back. */
public final class Workshop implements AutoCloseable {
    private final Ledger ledger;
    private final Shelf<Pack> packs;
    private final Shelf<Craft> craft;
    private final Shelf<Charger> chargers;
    private final Shelf<Source> sources;
    private final Shelf<Servo> servos;
    private final Shelf<Outing> outingShelf;
    private final Rules rules;
    private final Outings outings;

    private Workshop(Ledger ledger) {
        this.ledger = ledger;
        this.packs = new Shelf<>(ledger, Shapes.PACK, KitWords.PACK, Workshop::refuseLimitsPastBounds);
        this.craft = new Shelf<>(ledger, Shapes.CRAFT, KitWords.CRAFT, any -> {});
        this.chargers = new Shelf<>(ledger, Shapes.CHARGER, KitWords.CHARGER, any -> {});
        this.sources = new Shelf<>(ledger, Shapes.SOURCE, KitWords.SOURCE, any -> {});
        this.servos = new Shelf<>(ledger, Shapes.SERVO, KitWords.SERVO, any -> {});
        this.outingShelf = new Shelf<>(
                ledger,
                Shapes.OUTING,
                KitWords.OUTING,
                any -> {},
                (present, edited) -> edited.withChoices(present.choices()).withHappened(present.happened()));
        this.rules = new Rules(ledger, packs);
        this.outings = new Outings(ledger, this);
    }

    /**
     * Opens the book in a folder, making a new one where there is none.
     *
     * @throws fettle.workshop.BookException if it is in use, read-only, damaged, or made by a newer version
     */
    public static Workshop open(Path folder, Clock clock, String actor) {
        return Ledger.told(() -> new Workshop(new Ledger(Book.open(folder), clock, actor)));
    }

    /**
     * Puts a backup in place of the book in a folder; what was there is kept beside it. Returns what was done.
     *
     * @throws BookException if the backup is not whole or the book is in use; nothing is changed then
     */
    public static List<String> restore(Path backup, Path folder, Clock clock) {
        return Ledger.told(() -> Restore.put(backup, folder, clock.instant()));
    }

    public Shelf<Pack> packs() {
        return packs;
    }

    public Shelf<Craft> craft() {
        return craft;
    }

    public Shelf<Charger> chargers() {
        return chargers;
    }

    public Shelf<Source> sources() {
        return sources;
    }

    public Shelf<Servo> servos() {
        return servos;
    }

    /** Outings as they are written down. */
    public Shelf<Outing> outingShelf() {
        return outingShelf;
    }

    /** Plans outings, and keeps what comes of them. */
    public Outings outings() {
        return outings;
    }

    /** Which packs suit a craft. */
    public CraftFits fits() {
        return new CraftFits(this, ledger);
    }

    public SetUps setUps() {
        return new SetUps(ledger, craft);
    }

    public Entries entries() {
        return new Entries(ledger, packs, new BookKit(packs, craft, rules));
    }

    public Review review() {
        return new Review(ledger, this);
    }

    public History history() {
        return new History(ledger);
    }

    public Traces traces() {
        return new Traces(ledger, packs, rules);
    }

    public ShelfCheck shelfCheck() {
        return new ShelfCheck(ledger, entries());
    }

    public Labels labels() {
        return new Labels(packs, rules);
    }

    public Rules rules() {
        return rules;
    }

    public Keeping keeping() {
        return new Keeping(ledger);
    }

    /** Does several things as one: all of them are saved, or, if one throws, none; and much faster than one by one. */
    public <R> R together(Supplier<R> work) {
        return ledger.together(work);
    }

    @Override
    public void close() {
        outings.stopAll();
        ledger.use(() -> {
            ledger.book().close();
            return true;
        });
    }

    /** A maker's limit binds like any changed rule: looser needs a reason, and none reaches past the chemistry. */
    private static void refuseLimitsPastBounds(Pack pack) {
        RuleSet usual = RuleSet.of(List.of());
        pack.makersLimits().forEach(limit -> usual.refuseUnlessAllowed(limit, List.of()));
    }
}
