package fettle.desk.kit;

import static fettle.desk.frame.Figures.NOT_KNOWN;

import fettle.desk.frame.Figures;
import fettle.desk.frame.Place;
import fettle.engine.cell.Chemistry;
import fettle.engine.control.servo.Rating;
import fettle.engine.control.servo.Servo;
import fettle.engine.outing.Outing;
import fettle.engine.pack.Craft;
import fettle.engine.pack.CraftKind;
import fettle.engine.pack.Pack;
import fettle.engine.supply.Charger;
import fettle.engine.supply.Port;
import fettle.engine.supply.Source;
import fettle.engine.supply.SourceKind;
import fettle.engine.units.TradeUnit;
import fettle.workshop.ChargerForm;
import fettle.workshop.CraftForm;
import fettle.workshop.GoalText;
import fettle.workshop.OutingForm;
import fettle.workshop.PackForm;
import fettle.workshop.ServoForm;
import fettle.workshop.SourceForm;
import fettle.workshop.Workshop;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The kinds of kit. */
public final class ItemKinds {
    private static final List<String> CHEMISTRIES =
            Arrays.stream(Chemistry.values()).map(Chemistry::label).toList();

    private static final ItemKind<Pack> PACKS = new ItemKind<>(
            "packs",
            "Packs",
            "pack",
            "A pack needs its tag, chemistry, cells and capacity; the rest can follow.",
            Workshop::packs,
            Pack::tag,
            List.of(
                    Column.words("Chemistry"),
                    Column.figure("Cells"),
                    Column.figure("Capacity"),
                    Column.figure("Charge rating"),
                    Column.figure("Discharge rating"),
                    Column.words("Connector")),
            pack -> List.of(
                    pack.chemistry().label(),
                    pack.arrangement(),
                    TradeUnit.MILLIAMPERE_HOUR.print(pack.ratedCapacityCoulombs(), 0),
                    amps(pack.chargeRatingAmps()),
                    amps(pack.dischargeRatingAmps()),
                    stated(pack.connector())),
            ItemForm.over(
                    PackForm.class,
                    List.of(
                            Field.line("tag", "Tag", "as written on the pack, e.g. P07")
                                    .asNeeded(),
                            Field.choice(
                                            "chemistry",
                                            "Chemistry",
                                            "off the label; it decides every limit, so it is not guessed",
                                            CHEMISTRIES)
                                    .asNeeded(),
                            Field.line("cells", "Cells", "in series and parallel, e.g. 4S or 6S2P")
                                    .asNeeded(),
                            Field.line("capacity", "Capacity", "e.g. 5000 mAh or 5 Ah; mAh if no unit is written")
                                    .asNeeded(),
                            Field.choice(
                                            "identity",
                                            "Chemistry and cells are",
                                            "confirmed once you read the label and counted the balance-lead wires (cells + 1)",
                                            List.of("unconfirmed", "confirmed"))
                                    .usually("unconfirmed"),
                            Field.line(
                                    "chargeRating",
                                    "Charge rating",
                                    "e.g. 2C or 10 A; empty if not on the label: 1C is then the limit"),
                            Field.line("dischargeRating", "Discharge rating", "e.g. 30C or 150 A"),
                            Field.line("mass", "Mass", "with leads, e.g. 540 g or 19 oz"),
                            Field.line("connector", "Connector", "as you call it, e.g. 4 mm bullet"),
                            Field.day("bought", "Bought", "the day, if you know it"),
                            Field.line("keeper", "Keeper", "who keeps it"),
                            Field.lines(
                                    "limits",
                                    "Maker's limits",
                                    "where they differ from the rules; one a line, e.g. charge-limit 4.15 V. A looser one needs its reason: … because …"),
                            Field.lines("note", "Note", "anything else")),
                    PackForm::toPack,
                    PackForm::of),
            Place.KIT);

    private static final ItemKind<Craft> CRAFT = new ItemKind<>(
            "craft",
            "Craft",
            "craft",
            "With the craft, a run says what the pack was used in.",
            Workshop::craft,
            Craft::name,
            List.of(
                    Column.words("Kind"),
                    Column.figure("Cells"),
                    Column.figure("Typical current"),
                    Column.figure("Peak current"),
                    Column.words("Connector"),
                    Column.words("Keeper")),
            craft -> List.of(
                    craft.kind().label(),
                    craft.cellsInSeries() == null ? NOT_KNOWN : craft.cellsInSeries() + "S",
                    amps(craft.typicalAmps()),
                    amps(craft.peakAmps()),
                    stated(craft.connector()),
                    stated(craft.keeper())),
            ItemForm.over(
                    CraftForm.class,
                    List.of(
                            Field.line("name", "Name", "the name you use").asNeeded(),
                            Field.choice(
                                            "kind",
                                            "Kind",
                                            "what it is",
                                            Arrays.stream(CraftKind.values())
                                                    .map(CraftKind::label)
                                                    .toList())
                                    .asNeeded(),
                            Field.line("cells", "Cells", "it takes, e.g. 4S; empty if several fit"),
                            Field.line("connector", "Connector", "as you call it, e.g. 4 mm bullet"),
                            Field.line("typicalCurrent", "Typical current", "over a whole run, e.g. 25 A"),
                            Field.line("peakCurrent", "Peak current", "for a few seconds, e.g. 60 A"),
                            Field.line("keeper", "Keeper", "who keeps it"),
                            Field.lines("note", "Note", "anything else")),
                    CraftForm::toCraft,
                    CraftForm::of),
            Place.KIT);

    private static final ItemKind<Charger> CHARGERS = new ItemKind<>(
            "chargers",
            "Chargers",
            "charger",
            "With a charger and the limits of its ports, charging currents can be named.",
            Workshop::chargers,
            Charger::name,
            List.of(
                    Column.words("Ports"),
                    Column.figure("All ports together"),
                    Column.words("Charges"),
                    Column.words("Fed by")),
            charger -> List.of(
                    charger.ports().stream().map(ItemKinds::port).collect(Collectors.joining("; ")),
                    watts(charger.totalWatts()),
                    charger.chemistries().stream()
                            .sorted()
                            .map(Chemistry::label)
                            .collect(Collectors.joining(", ")),
                    Objects.requireNonNullElse(charger.source(), NOT_KNOWN)),
            ItemForm.over(
                    ChargerForm.class,
                    List.of(
                            Field.line("name", "Name", "the name you use on the bench")
                                    .asNeeded(),
                            Field.lines(
                                            "ports",
                                            "Ports",
                                            "one a line with its limits, e.g. 20A 400W 6S bleed 0.5A discharge 25W")
                                    .asNeeded(),
                            Field.line("totalPower", "Power of all ports together", "e.g. 700 W; empty if not shared"),
                            Field.choices("chemistries", "Charges", "tick what it has a mode for", CHEMISTRIES)
                                    .asNeeded(),
                            Field.line("source", "Source", "what feeds it; add sources first"),
                            Field.lines("note", "Note", "anything else")),
                    ChargerForm::toCharger,
                    ChargerForm::of),
            Place.KIT);

    private static final ItemKind<Source> SOURCES = new ItemKind<>(
            "sources",
            "Sources",
            "source",
            "A source is what feeds the chargers: mains supply, field battery, generator. Its power is often the strictest limit.",
            Workshop::sources,
            Source::name,
            List.of(Column.words("Kind"), Column.figure("Power"), Column.figure("Energy")),
            source -> List.of(
                    source.kind().label(),
                    watts(source.maxWatts()),
                    Figures.quantity(source.energyJoules(), TradeUnit.WATT_HOUR, 0)),
            ItemForm.over(
                    SourceForm.class,
                    List.of(
                            Field.line("name", "Name", "the name you use").asNeeded(),
                            Field.choice(
                                            "kind",
                                            "Kind",
                                            "what feeds the chargers",
                                            Arrays.stream(SourceKind.values())
                                                    .map(SourceKind::label)
                                                    .toList())
                                    .asNeeded(),
                            Field.line("power", "Power", "it can give for hours, e.g. 600 W; W if no unit is written")
                                    .asNeeded(),
                            Field.line("energy", "Energy", "it holds, e.g. 960 Wh; empty where it does not run out"),
                            Field.lines("note", "Note", "anything else")),
                    SourceForm::toSource,
                    SourceForm::of),
            Place.KIT);

    private static final ItemKind<Servo> SERVOS = new ItemKind<>(
            "servos",
            "Servos",
            "servo",
            "With a servo's data by voltage its margin can be told at the voltage that is left.",
            Workshop::servos,
            Servo::name,
            List.of(Column.figure("Centre"), Column.figure("For 100 µs"), Column.words("Torque by voltage")),
            servo -> List.of(
                    TradeUnit.MICROSECOND.print(servo.scale().centreSeconds(), 0),
                    TradeUnit.DEGREE.print(servo.scale().radiansPerPulseSecond() * TradeUnit.MICROSECOND.toSi(100), 1),
                    servo.ratings().rising().stream().map(ItemKinds::torque).collect(Collectors.joining("; "))),
            ItemForm.over(
                    ServoForm.class,
                    List.of(
                            Field.line("name", "Name", "the name you use on the bench")
                                    .asNeeded(),
                            Field.lines(
                                            "ratings",
                                            "Data by voltage",
                                            "one voltage a line: volts, torque, time for 60°, currents, e.g. 6V 5.5kgcm"
                                                    + " 0.12s idle 8mA moving 0.25A stall 1.6A")
                                    .asNeeded(),
                            Field.line(
                                    "centre", "Centre pulse", "1500 µs if nothing is written; 760 µs for some tails"),
                            Field.line("turn", "Angle for 100 µs", "10° if nothing is written; measure it"),
                            Field.line("span", "Pulse to its stop", "from its centre; 500 µs if nothing is written"),
                            Field.line("frame", "Fastest frame rate", "50 Hz if nothing is written"),
                            Field.line("deadBand", "Dead band", "5 µs if nothing is written")),
                    ServoForm::toServo,
                    ServoForm::of),
            Place.KIT);

    private static final ItemKind<Outing> OUTINGS = new ItemKind<>(
            "outings",
            "Outings",
            "outing",
            "An outing says which runs are wanted, which packs may be used and where they are charged; Fettle plans it.",
            Workshop::outingShelf,
            Outing::name,
            List.of(Column.words("Day"), Column.figure("Runs wanted"), Column.figure("Packs")),
            outing -> List.of(
                    outing.date().toString(),
                    String.valueOf(outing.runs().size()),
                    String.valueOf(outing.packs().size())),
            ItemForm.over(
                    OutingForm.class,
                    List.of(
                            Field.line("name", "Name", "e.g. Saturday at the lake")
                                    .asNeeded(),
                            Field.day("date", "Day", "the day at the field").asNeeded(),
                            Field.line("zone", "Time zone", "of every time here, e.g. Europe/Zurich")
                                    .asNeeded(),
                            Field.line("leaveHome", "Leave home", "e.g. 08:00").asNeeded(),
                            Field.line("arrive", "Arrive", "when the field is reached")
                                    .asNeeded(),
                            Field.line("packUp", "Pack up", "when the last pack is off the chargers there")
                                    .asNeeded(),
                            Field.line("backHome", "Back home", "empty: as long as the way there"),
                            Field.line("ambient", "Temperature at the field", "e.g. 18 °C; °C if no unit is written")
                                    .asNeeded(),
                            Field.lines(
                                    "attended",
                                    "Somebody is there",
                                    "one a line, e.g. home day before 19:00 to 22:30. Nothing is charged at other times."
                                            + " Empty: the whole time at the field"),
                            Field.lines(
                                    "feeds",
                                    "Chargers and what feeds them",
                                    "one a line: place, charger, source; then efficiency and, for a generator, its time,"
                                            + " e.g. field: field-pair on field-box; 85 %; 09:00 to 12:00"),
                            Field.lines("packs", "Packs that may be used", "their tags, e.g. P01, P02")
                                    .asNeeded(),
                            Field.lines(
                                            "runs",
                                            "Runs wanted",
                                            "one a line: craft and how many, value, earliest to latest start, run time; then"
                                                    + " gap and what one takes, e.g. Harrier x3; value 5; 09:30 to 15:00;"
                                                    + " 8 min; gap 10 min; takes 70 %")
                                    .asNeeded(),
                            Field.lines(
                                    "goals",
                                    "Goals",
                                    "one a line, the most important first; those left out follow. Usual order: "
                                            + String.join("; ", GoalText.usual())),
                            Field.line(
                                    "storageBy",
                                    "At storage by",
                                    "e.g. 22:00 or day after 20:00; empty: the end of the last attended time"),
                            Field.lines("note", "Note", "anything else")),
                    OutingForm::toOuting,
                    OutingForm::of),
            Place.OUTINGS);

    private ItemKinds() {}

    /** Outings, which are no kit but are typed alike. */
    public static ItemKind<Outing> outings() {
        return OUTINGS;
    }

    /** All kinds, in the order of the Kit page. */
    public static List<ItemKind<?>> all() {
        return List.of(PACKS, CRAFT, CHARGERS, SOURCES, SERVOS);
    }

    private static String torque(Rating rating) {
        return TradeUnit.VOLT.print(rating.volts(), 1) + " "
                + TradeUnit.KILOGRAM_FORCE_CENTIMETRE.print(rating.stallNewtonMetres(), 1);
    }

    private static String port(Port port) {
        return port.number() + ": " + amps(port.maxAmps()) + " " + watts(port.maxWatts()) + " " + port.maxCells() + "S";
    }

    private static String amps(@Nullable Double amps) {
        return amps == null ? NOT_KNOWN : TradeUnit.AMPERE.print(amps, isWhole(amps) ? 0 : 1);
    }

    private static boolean isWhole(double amps) {
        return Math.abs(amps - Math.rint(amps)) < 0.05; // what one decimal cannot show
    }

    private static String watts(@Nullable Double watts) {
        return Figures.quantity(watts, TradeUnit.WATT, 0);
    }

    private static String stated(String text) {
        return text.isBlank() ? NOT_KNOWN : text;
    }
}
