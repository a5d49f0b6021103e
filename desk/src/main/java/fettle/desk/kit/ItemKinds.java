package fettle.desk.kit;

import static fettle.desk.frame.Figures.NOT_KNOWN;

import fettle.desk.frame.Figures;
import fettle.engine.cell.Chemistry;
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
import fettle.workshop.PackForm;
import fettle.workshop.SourceForm;
import fettle.workshop.Workshop;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The four kinds of kit. */
public final class ItemKinds {
    private static final List<String> CHEMISTRIES =
            Arrays.stream(Chemistry.values()).map(Chemistry::label).toList();

    private static final ItemKind<Pack> PACKS = new ItemKind<>(
            "packs",
            "Packs",
            "pack",
            Workshop::packs,
            Pack::tag,
            List.of("Chemistry", "Cells", "Capacity", "Charge", "Discharge", "Connector"),
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
                            Field.line("tag", "Tag", "as written on the pack, e.g. P07"),
                            Field.choice("chemistry", "Chemistry", "off the label", CHEMISTRIES),
                            Field.line("cells", "Cells", "in series and parallel, e.g. 4S or 6S2P"),
                            Field.line("capacity", "Capacity", "e.g. 5000 mAh or 5 Ah"),
                            Field.choice(
                                    "identity",
                                    "Chemistry and cells are",
                                    "confirmed once you read the label or counted the balance-lead wires",
                                    List.of("unconfirmed", "confirmed")),
                            Field.line("chargeRating", "Charge rating", "e.g. 2C or 10A; empty if not on the label"),
                            Field.line("dischargeRating", "Discharge rating", "e.g. 30C or 150A"),
                            Field.line("mass", "Mass", "with leads, e.g. 540 g or 19 oz"),
                            Field.line("connector", "Connector", "as you call it"),
                            Field.line("bought", "Bought", "e.g. 2025-04-30"),
                            Field.line("keeper", "Keeper", "who keeps it"),
                            Field.lines(
                                    "limits",
                                    "Maker's limits",
                                    "one a line, e.g. charge-limit 4.15 V; if looser than the rule: because …"),
                            Field.lines("note", "Note", "anything else")),
                    PackForm::toPack,
                    PackForm::of));

    private static final ItemKind<Craft> CRAFT = new ItemKind<>(
            "craft",
            "Craft",
            "craft",
            Workshop::craft,
            Craft::name,
            List.of("Kind", "Cells", "Typical", "Peak", "Connector", "Keeper"),
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
                            Field.line("name", "Name", "the name you use"),
                            Field.choice(
                                    "kind",
                                    "Kind",
                                    "",
                                    Arrays.stream(CraftKind.values())
                                            .map(CraftKind::label)
                                            .toList()),
                            Field.line("cells", "Cells", "it takes, e.g. 4S; empty if several fit"),
                            Field.line("connector", "Connector", "as you call it"),
                            Field.line("typicalCurrent", "Typical current", "e.g. 25 A"),
                            Field.line("peakCurrent", "Peak current", "e.g. 60 A"),
                            Field.line("keeper", "Keeper", "who keeps it"),
                            Field.lines("note", "Note", "anything else")),
                    CraftForm::toCraft,
                    CraftForm::of));

    private static final ItemKind<Charger> CHARGERS = new ItemKind<>(
            "chargers",
            "Chargers",
            "charger",
            Workshop::chargers,
            Charger::name,
            List.of("Ports", "Together", "Charges", "Source"),
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
                            Field.line("name", "Name", "the name you use on the bench"),
                            Field.lines("ports", "Ports", "one a line, e.g. 20A 400W 6S bleed 0.5A discharge 25W"),
                            Field.line("totalPower", "Power of all ports together", "e.g. 700 W; empty if not shared"),
                            Field.line("chemistries", "Charges", String.join(", ", CHEMISTRIES)),
                            Field.line("source", "Source", "name of the source that feeds it"),
                            Field.lines("note", "Note", "anything else")),
                    ChargerForm::toCharger,
                    ChargerForm::of));

    private static final ItemKind<Source> SOURCES = new ItemKind<>(
            "sources",
            "Sources",
            "source",
            Workshop::sources,
            Source::name,
            List.of("Kind", "Power", "Energy"),
            source -> List.of(
                    source.kind().label(),
                    watts(source.maxWatts()),
                    Figures.quantity(source.energyJoules(), TradeUnit.WATT_HOUR, 0)),
            ItemForm.over(
                    SourceForm.class,
                    List.of(
                            Field.line("name", "Name", "the name you use"),
                            Field.choice(
                                    "kind",
                                    "Kind",
                                    "",
                                    Arrays.stream(SourceKind.values())
                                            .map(SourceKind::label)
                                            .toList()),
                            Field.line("power", "Power", "it can give for hours, e.g. 600 W"),
                            Field.line("energy", "Energy", "it holds, e.g. 960 Wh; empty where it does not run out"),
                            Field.lines("note", "Note", "anything else")),
                    SourceForm::toSource,
                    SourceForm::of));

    private ItemKinds() {}

    /** All kinds, in the order of the Kit page. */
    public static List<ItemKind<?>> all() {
        return List.of(PACKS, CRAFT, CHARGERS, SOURCES);
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
