package fettle.workshop.demo;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.Craft;
import fettle.engine.pack.CraftKind;
import fettle.engine.pack.Pack;
import fettle.engine.supply.Charger;
import fettle.engine.supply.Port;
import fettle.engine.supply.Source;
import fettle.engine.supply.SourceKind;
import fettle.engine.units.TradeUnit;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What the invented club owns. */
final class DemoKit {
    private static final Set<Chemistry> LITHIUM =
            Set.of(Chemistry.LIPO, Chemistry.LIHV, Chemistry.LIFEPO4, Chemistry.LI_ION);
    private static final Set<Chemistry> LITHIUM_AND_NICKEL =
            Set.of(Chemistry.LIPO, Chemistry.LIHV, Chemistry.LIFEPO4, Chemistry.LI_ION, Chemistry.NIMH);

    private DemoKit() {}

    static List<Source> sources() {
        return List.of(
                new Source("clubhouse", SourceKind.MAINS, 700, null, "bench supply under the window"),
                new Source("field-box", SourceKind.FIELD_BATTERY, 300, TradeUnit.WATT_HOUR.toSi(960), "on the trolley"),
                new Source("generator", SourceKind.GENERATOR, 900, null, "ask Ines for the key"));
    }

    static List<Charger> chargers() {
        return List.of(
                new Charger(
                        "bench-pair",
                        600.0,
                        LITHIUM_AND_NICKEL,
                        "clubhouse",
                        List.of(new Port(1, 20, 400, 8, 1.0, 40.0), new Port(2, 20, 400, 8, 1.0, 40.0)),
                        ""),
                new Charger(
                        "tall",
                        null,
                        LITHIUM,
                        "clubhouse",
                        List.of(new Port(1, 15, 550, 14, 0.8, 30.0)),
                        "for 8S and up"),
                new Charger(
                        "field-pair",
                        240.0,
                        LITHIUM_AND_NICKEL,
                        "field-box",
                        List.of(new Port(1, 10, 150, 6, 0.5, 10.0), new Port(2, 10, 150, 6, 0.5, 10.0)),
                        ""),
                new Charger(
                        "tiny",
                        20.0,
                        Set.of(Chemistry.LIPO, Chemistry.LIHV),
                        "clubhouse",
                        List.of(new Port(1, 1, 5, 1, null, null), new Port(2, 1, 5, 1, null, null)),
                        "for the Gnats"));
    }

    static List<Craft> craft() {
        return List.of(
                new Craft("Harrier", CraftKind.PLANE, 4, "4 mm bullet", 32.0, 62.0, "Ines", "trainer with floats"),
                new Craft("Curlew", CraftKind.PLANE, 8, "5.5 mm bullet", 40.0, 85.0, "Tobias", "tow plane"),
                new Craft("Damselfly", CraftKind.HELICOPTER, 12, "5.5 mm bullet", 38.0, 110.0, "Wren", ""),
                new Craft("Gnat", CraftKind.MULTIROTOR, 1, "2-pin", 4.5, 9.0, "Dov", "hall flyer"),
                new Craft("Sandhopper", CraftKind.CAR, 2, "3.5 mm bullet", 18.0, 70.0, "Dov", ""),
                new Craft("Teal", CraftKind.BOAT, 3, "4 mm bullet", 12.0, 30.0, "Ines", "rescue boat"));
    }

    /** A pack of the club as bought at an instant; ratings as C. */
    static Pack pack(
            String tag, Chemistry chemistry, String cells, double milliampHours, Rating rating, Instant bought) {
        String[] counts = cells.split("[SP]");
        double ampHours = milliampHours / 1000;
        return new Pack(
                tag,
                chemistry,
                Integer.parseInt(counts[0]),
                counts.length > 1 ? Integer.parseInt(counts[1]) : 1,
                TradeUnit.MILLIAMPERE_HOUR.toSi(milliampHours),
                rating.charge() == null ? null : rating.charge() * ampHours,
                rating.discharge() * ampHours,
                null,
                rating.connector(),
                bought.atOffset(ZoneOffset.UTC).toLocalDate(),
                rating.keeper(),
                rating.identity(),
                List.of(),
                rating.note());
    }

    /** What a label and its keeper say: charge and discharge rating [1/h, as C], connector, keeper, note. */
    record Rating(
            @Nullable Double charge,
            double discharge,
            String connector,
            String keeper,
            Pack.Identity identity,
            String note) {
        static Rating of(@Nullable Double charge, double discharge, String connector, String keeper) {
            return new Rating(charge, discharge, connector, keeper, Pack.Identity.CONFIRMED, "");
        }

        Rating unconfirmed(String why) {
            return new Rating(charge, discharge, connector, keeper, Pack.Identity.UNCONFIRMED, why);
        }
    }
}
