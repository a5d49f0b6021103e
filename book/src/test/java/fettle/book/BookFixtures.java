package fettle.book;

import fettle.book.record.Row;
import fettle.book.record.Shapes;
import fettle.book.store.Book;
import fettle.book.store.JournalRow;
import fettle.book.store.Note;
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
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;

/** Invented kit and entries for tests of the book. */
public final class BookFixtures {
    public static final Instant NOON = Instant.parse("2026-06-01T12:00:00Z");
    public static final Row IN_USE = Row.empty().withFlag("retired", false).with("retired_reason", "");

    private BookFixtures() {}

    public static Note note(String sentence, String subject) {
        return new Note(NOON, "Marten", sentence, subject);
    }

    public static Pack pack(String tag) {
        return new Pack(
                tag,
                Chemistry.LIPO,
                4,
                1,
                18_000,
                25.0,
                150.0,
                0.54,
                "5 mm bullets",
                LocalDate.of(2025, 11, 2),
                "Ada",
                Pack.Identity.CONFIRMED,
                List.of(new RuleOverride(
                        Chemistry.LIPO, Quantity.CHARGE_LIMIT, 4.15, tag, "label, \"gentle\"\nline two")),
                "from the club table");
    }

    public static Craft craft(String name) {
        return new Craft(name, CraftKind.GLIDER, 3, "", 22.5, null, "Ada", "");
    }

    public static Source source(String name) {
        return new Source(name, SourceKind.FIELD_BATTERY, 600, 3.6e6, "");
    }

    public static Charger charger(String name, String source) {
        return new Charger(
                name,
                500.0,
                Set.of(Chemistry.LIPO, Chemistry.NIMH, Chemistry.LIFEPO4),
                source,
                List.of(new Port(1, 20, 400, 6, 0.5, 25.0), new Port(2, 10, 100, 4, null, null)),
                "");
    }

    public static Check check(Instant at) {
        return new Check(
                at,
                List.of(3.84, 3.83, 3.85, 3.84),
                15.36,
                7_200.0,
                294.15,
                List.of(0.0021, 0.0022, 0.0020),
                "pulse",
                Set.of(Check.Sign.SMELL),
                "");
    }

    public static ChargeRecord charge(Instant at) {
        return new ChargeRecord(at, 11_160.0, null, 305.15, "");
    }

    public static Run run(Instant at, String craft) {
        return new Run(at, craft, 390, 0.3, null, null, "gusty");
    }

    /** A pack with one entry of each kind, in a craft, with charger, source and two changed rules. */
    public static void fill(Book book) {
        book.items(Shapes.PACK).add(pack("P07"), IN_USE, note("added pack P07", "P07"));
        book.items(Shapes.CRAFT).add(craft("Kestrel"), IN_USE, note("added craft Kestrel", "Kestrel"));
        book.items(Shapes.SOURCE).add(source("Trolley"), IN_USE, note("added source Trolley", "Trolley"));
        book.items(Shapes.CHARGER)
                .add(charger("Bench left", "Trolley"), IN_USE, note("added charger Bench left", "Bench left"));
        addCheck(book, NOON);
        book.items(Shapes.CHARGE).add(charge(NOON.plusSeconds(60)), ofPack(1, "charged"), note("charged P07", "P07"));
        book.items(Shapes.RUN).add(run(NOON.plusSeconds(90), "Kestrel"), ofPack(1, "ran"), note("ran P07", "P07"));
        book.items(Shapes.RULE)
                .add(
                        new RuleOverride(Chemistry.LIPO, Quantity.STORAGE_TIME, 172_800, null, ""),
                        Row.empty(),
                        note("changed storage time", ""));
        book.items(Shapes.RULE)
                .add(
                        new RuleOverride(Chemistry.LIPO, Quantity.STORAGE_TIME, 86_400, "P07", "hot shed"),
                        Row.empty(),
                        note("changed storage time for P07", "P07"));
    }

    public static JournalRow addCheck(Book book, Instant at) {
        return book.items(Shapes.CHECK)
                .add(check(at), ofPack(1, "P07 3.84 3.83 3.85 3.84"), note("check of P07", "P07"));
    }

    public static Row ofPack(long packId, String typed) {
        return Row.empty().with("pack_id", packId).with("typed", typed);
    }
}
