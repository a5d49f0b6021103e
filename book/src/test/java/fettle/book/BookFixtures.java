package fettle.book;

import fettle.book.record.Row;
import fettle.book.record.Shapes;
import fettle.book.store.Book;
import fettle.book.store.JournalRow;
import fettle.book.store.Note;
import fettle.engine.cell.Chemistry;
import fettle.engine.control.servo.PulseScale;
import fettle.engine.control.servo.Rating;
import fettle.engine.control.servo.Ratings;
import fettle.engine.control.servo.Servo;
import fettle.engine.control.setup.Rate;
import fettle.engine.control.setup.SetUpSheet;
import fettle.engine.control.setup.SurfaceSetting;
import fettle.engine.control.sweep.SurfaceSweep;
import fettle.engine.control.sweep.Sweep;
import fettle.engine.control.sweep.SweepPoint;
import fettle.engine.outing.Attended;
import fettle.engine.outing.Choice;
import fettle.engine.outing.Feed;
import fettle.engine.outing.Happened;
import fettle.engine.outing.KeptPlan;
import fettle.engine.outing.Outing;
import fettle.engine.outing.OutingTimes;
import fettle.engine.outing.RunWish;
import fettle.engine.outing.Spot;
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
import java.util.stream.IntStream;

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

    /** A servo, and a set-up sheet and a sweep of a craft that is in the book. */
    public static void fillControls(Book book) {
        book.items(Shapes.SERVO).add(servo("wing"), IN_USE, note("added servo wing", "wing"));
        book.items(Shapes.SET_UP_SHEET).add(sheet("Kestrel"), Row.empty(), note("set up Kestrel", "Kestrel"));
        book.items(Shapes.SURFACE_SWEEP).add(sweep("Kestrel"), Row.empty(), note("swept Kestrel", "Kestrel"));
    }

    /** An outing with a plan, of kit that is in the book. */
    public static void fillOuting(Book book) {
        book.items(Shapes.OUTING).add(outing("Lake day"), IN_USE, note("added outing Lake day", "Lake day"));
        book.items(Shapes.OUTING_PLAN).add(plan("Lake day"), Row.empty(), note("planned Lake day", "Lake day"));
    }

    public static Outing outing(String name) {
        return new Outing(
                name,
                "Europe/Zurich",
                new OutingTimes(at(1), at(2), at(8), at(9)),
                288.15,
                List.of(new Attended(Spot.FIELD, at(2), at(7)), new Attended(Spot.HOME, at(10), at(12))),
                List.of(
                        new Feed(Spot.FIELD, "Bench left", "Trolley", 0.85, at(2), at(5)),
                        new Feed(Spot.HOME, "Bench left", "Trolley", 0.9, null, null)),
                List.of("P07"),
                List.of(
                        new RunWish("Kestrel", 2, 5, at(2), at(6), 480, 600, 0.7),
                        new RunWish("Kestrel", 1, 1, at(6), at(7), 300, 0, null)),
                List.of("EARLIEST_FINISH", "LEAST_STRESS"),
                at(12),
                List.of(
                        new Choice(Choice.Kind.RUN_PACKS, "Kestrel 1", List.of("P07"), null),
                        new Choice(Choice.Kind.RUN_START, "Kestrel 1", List.of(), at(3))),
                List.of(new Happened(Happened.Kind.RUN, "Kestrel 1", List.of("P07"), at(3), at(4), 9_000.0)),
                "bring the \"ladder\"");
    }

    public static KeptPlan plan(String outing) {
        return new KeptPlan(
                outing,
                NOON,
                at(1),
                List.of("P07 80 %, ready"),
                List.of(new KeptPlan.PlannedCharge(
                        "P07 on Bench left port 1 at 5.0 A",
                        List.of("P07"),
                        Spot.FIELD,
                        "Bench left port 1",
                        "to full",
                        at(2),
                        at(3),
                        0.4,
                        1,
                        "Trolley",
                        96.5,
                        200_000)),
                List.of(new KeptPlan.PlannedRun("Kestrel 1", "Kestrel", List.of("P07"), at(3), at(4), at(5))),
                List.of(new KeptPlan.GoalReached("the most valuable runs", "1 of 3", false, 0.2)),
                List.of("P08 is left out: grounded"),
                1.5);
    }

    private static Instant at(int hours) {
        return NOON.plusSeconds(3600L * hours);
    }

    public static Servo servo(String name) {
        return new Servo(
                name,
                new PulseScale(1500e-6, -1745),
                600e-6,
                333,
                3e-6,
                new Ratings(List.of(
                        new Rating(4.8, 0.45, 7.0, 0.01, 0.25, 1.4), new Rating(7.4, 0.69, null, null, null, 2.2))));
    }

    public static SetUpSheet sheet(String craft) {
        return new SetUpSheet(
                craft,
                LocalDate.of(2026, 5, 16),
                List.of(
                        surface("left aileron", List.of(new Rate("high", 0.35, 0.28), new Rate("low", 0.2, 0.15))),
                        surface("rudder", List.of(new Rate("all", 0.5, 0.5)))),
                "after the new \"horn\"");
    }

    public static SurfaceSweep sweep(String craft) {
        List<SweepPoint> points = IntStream.range(0, 20)
                .mapToObj(step -> new SweepPoint(1000e-6 + step * 10e-6, 0.2 + step * 1e-3, step == 3 ? null : 0.1))
                .toList();
        return new SurfaceSweep(craft, "left aileron", NOON, "left.csv", new Sweep(points, 0.012, null));
    }

    private static SurfaceSetting surface(String name, List<Rate> rates) {
        return new SurfaceSetting(
                name,
                "wing",
                1100e-6,
                1500e-6,
                1900e-6,
                name.startsWith("l"),
                0.05,
                rates,
                0.01,
                null,
                0.012,
                null,
                null);
    }

    public static JournalRow addCheck(Book book, Instant at) {
        return book.items(Shapes.CHECK)
                .add(check(at), ofPack(1, "P07 3.84 3.83 3.85 3.84"), note("check of P07", "P07"));
    }

    public static Row ofPack(long packId, String typed) {
        return Row.empty().with("pack_id", packId).with("typed", typed);
    }
}
