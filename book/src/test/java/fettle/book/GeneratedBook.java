package fettle.book;

import static fettle.book.BookFixtures.IN_USE;
import static fettle.book.BookFixtures.NOON;
import static fettle.book.BookFixtures.ofPack;

import fettle.book.record.Row;
import fettle.book.record.Shapes;
import fettle.book.store.Book;
import fettle.book.store.Note;
import fettle.book.store.Stored;
import fettle.engine.cell.Chemistry;
import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.Check;
import fettle.engine.pack.Craft;
import fettle.engine.pack.CraftKind;
import fettle.engine.pack.Pack;
import fettle.engine.pack.Run;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.RuleOverride;
import fettle.engine.supply.Charger;
import fettle.engine.supply.Port;
import fettle.engine.supply.Source;
import fettle.engine.supply.SourceKind;
import fettle.engine.units.InputException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Books full of generated kit, entries, edits, retirements and undoings; the same seed gives the same book. */
public final class GeneratedBook {
    private static final List<String> NOTES = List.of(
            "",
            "plain",
            "comma, \"quoted\"",
            "two\r\nlines",
            "ünïcode ✕ 電池",
            " spaced ",
            "=1+1",
            "'; DROP TABLE pack; --");

    private final Book book;
    private final Random random;
    private Instant at = NOON;

    private GeneratedBook(Book book, long seed) {
        this.book = book;
        this.random = new Random(seed);
    }

    public static void fill(Book book, long seed) {
        GeneratedBook generated = new GeneratedBook(book, seed);
        book.inTransaction(handle -> {
            generated.kit();
            for (int change = 0; change < 120; change++) {
                generated.change();
            }
            return true;
        });
    }

    private void kit() {
        for (int item = 1; item <= 4; item++) {
            book.items(Shapes.SOURCE).add(source("Source " + item), IN_USE, note());
            book.items(Shapes.CRAFT).add(craft("Craft " + item), IN_USE, note());
            book.items(Shapes.CHARGER).add(charger("Charger " + item, "Source " + item), IN_USE, note());
            book.items(Shapes.PACK).add(pack("P0" + item), IN_USE, note());
        }
    }

    private void change() {
        switch (random.nextInt(7)) {
            case 0 -> book.items(Shapes.CHARGE).add(charge(), ofPack(anyPack().id(), text()), note());
            case 1 -> book.items(Shapes.RUN).add(run(), ofPack(anyPack().id(), text()), note());
            case 2 -> rule();
            case 3 -> editPack();
            case 4 -> undo();
            default -> book.items(Shapes.CHECK).add(check(), ofPack(anyPack().id(), text()), note());
        }
    }

    private void editPack() {
        Stored<Pack> pack = anyPack();
        if (random.nextBoolean()) {
            book.items(Shapes.PACK).replace(pack.id(), pack(pack.item().tag()), note());
        } else {
            Row mark = Row.empty().withFlag("retired", !pack.retired()).with("retired_reason", text());
            book.items(Shapes.PACK).mark(pack.id(), mark, note());
        }
    }

    /** Whether a random change can be undone is the book's to say; a refusal is no change. */
    private void undo() {
        long latest = book.journal().recent(0, 1).get(0).row().id();
        try {
            book.journal().undo(1 + random.nextInt((int) latest), note());
        } catch (InputException refused) {
            at = at.plusNanos(1);
        }
    }

    private void rule() {
        Quantity quantity = Quantity.values()[random.nextInt(Quantity.values().length)];
        RuleOverride override = new RuleOverride(
                Chemistry.LIPO,
                quantity,
                positive(),
                maybe(() -> anyPack().item().tag()),
                text());
        try {
            book.items(Shapes.RULE).add(override, Row.empty(), note());
        } catch (InputException takenPlace) {
            at = at.plusNanos(1);
        }
    }

    private Pack pack(String tag) {
        Chemistry chemistry = Chemistry.values()[random.nextInt(Chemistry.values().length)];
        return new Pack(
                tag,
                chemistry,
                1 + random.nextInt(12),
                1 + random.nextInt(3),
                100 + 70_000 * random.nextDouble(),
                maybe(this::positive),
                maybe(this::positive),
                maybe(this::positive),
                text(),
                maybe(() -> LocalDate.ofEpochDay(random.nextInt(22_000))),
                text(),
                random.nextBoolean() ? Pack.Identity.CONFIRMED : Pack.Identity.UNCONFIRMED,
                random.nextBoolean()
                        ? List.of()
                        : List.of(new RuleOverride(chemistry, Quantity.RESERVE, random.nextDouble(), null, text())),
                text());
    }

    private Craft craft(String name) {
        return new Craft(
                name,
                CraftKind.values()[random.nextInt(CraftKind.values().length)],
                maybe(() -> 1 + random.nextInt(12)),
                text(),
                maybe(this::positive),
                maybe(this::positive),
                text(),
                text());
    }

    private Source source(String name) {
        return new Source(name, SourceKind.VEHICLE_BATTERY, 1 + 900 * random.nextDouble(), maybe(() -> 1e6), text());
    }

    private Charger charger(String name, String source) {
        Set<Chemistry> chemistries = EnumSet.of(Chemistry.LIPO);
        Set.of(Chemistry.values()).stream().filter(any -> random.nextBoolean()).forEach(chemistries::add);
        return new Charger(
                name,
                maybe(this::positive),
                chemistries,
                maybe(() -> source),
                List.of(new Port(1, positive(), positive(), 6, maybe(this::positive), maybe(this::positive))),
                text());
    }

    private Check check() {
        List<Double> volts = new ArrayList<>();
        List<Double> ohms = new ArrayList<>();
        for (int cell = random.nextInt(13); cell > 0; cell--) {
            volts.add(5 * random.nextDouble());
        }
        for (int cell = random.nextInt(8); cell > 0; cell--) {
            ohms.add(0.001 + random.nextDouble());
        }
        Double pack = volts.isEmpty() ? Double.valueOf(100 * random.nextDouble()) : maybe(this::positive);
        Set<Check.Sign> signs = random.nextBoolean() ? Set.of() : Set.of(Check.Sign.SWELLING, Check.Sign.DAMAGE);
        return new Check(tick(), volts, pack, maybe(this::positive), maybe(() -> 290.15), ohms, text(), signs, text());
    }

    private ChargeRecord charge() {
        return new ChargeRecord(tick(), positive(), maybe(this::positive), maybe(() -> 300.0), text());
    }

    private Run run() {
        String craft = random.nextBoolean() ? "craft " + (1 + random.nextInt(4)) : text();
        return new Run(tick(), craft, 6 + positive(), maybe(random::nextDouble), maybe(this::positive), null, text());
    }

    private double positive() {
        return 0.1 + 10 * random.nextDouble();
    }

    /** One that is in the book; an undoing may have taken some away. */
    private Stored<Pack> anyPack() {
        List<Stored<Pack>> packs = book.items(Shapes.PACK).all();
        return packs.get(random.nextInt(packs.size()));
    }

    private String text() {
        return NOTES.get(random.nextInt(NOTES.size()));
    }

    private Instant tick() {
        at = at.plusNanos(1 + random.nextInt(1_000_000_000));
        return at;
    }

    private Note note() {
        return new Note(tick(), "Marten", "changed " + text(), text());
    }

    private <V> @Nullable V maybe(Supplier<V> value) {
        return random.nextBoolean() ? value.get() : null;
    }
}
