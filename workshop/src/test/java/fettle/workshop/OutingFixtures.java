package fettle.workshop;

import static fettle.workshop.WorkshopFixtures.open;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.Craft;
import fettle.engine.pack.CraftKind;
import fettle.engine.pack.Pack;
import fettle.engine.supply.Charger;
import fettle.engine.supply.Port;
import fettle.engine.supply.Source;
import fettle.engine.supply.SourceKind;
import fettle.engine.units.TradeUnit;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

/** A shelf of packs and a day at the lake. */
final class OutingFixtures {
    private OutingFixtures() {}

    static Workshop shelf(Path folder) {
        Workshop workshop = open(folder);
        workshop.sources().add(new Source("house", SourceKind.MAINS, 700, null, ""));
        workshop.sources().add(new Source("trolley", SourceKind.FIELD_BATTERY, 300, TradeUnit.WATT_HOUR.toSi(500), ""));
        workshop.chargers()
                .add(new Charger(
                        "bench",
                        null,
                        Set.of(Chemistry.LIPO),
                        "house",
                        List.of(new Port(1, 10, 200, 6, 0.5, 25.0), new Port(2, 10, 200, 6, 0.5, 25.0)),
                        ""));
        workshop.chargers()
                .add(new Charger(
                        "outdoor",
                        null,
                        Set.of(Chemistry.LIPO),
                        "trolley",
                        List.of(new Port(1, 6, 100, 6, 0.3, 10.0)),
                        ""));
        workshop.craft().add(new Craft("Heron", CraftKind.BOAT, 3, "", 12.0, 30.0, "", ""));
        for (String tag : List.of("A1", "A2", "A3")) {
            workshop.packs().add(pack(tag, 3));
            workshop.entries().enter(tag + " 3.84 3.84 3.84 21C rest 2h");
        }
        workshop.packs().add(pack("B1", 4));
        workshop.entries().enter("B1 3.84 3.84 3.84 3.84 21C rest 2h");
        workshop.packs().add(pack("C1", 3));
        workshop.entries().enter("C1 swollen");
        return workshop;
    }

    private static Pack pack(String tag, int cells) {
        return new Pack(
                tag,
                Chemistry.LIPO,
                cells,
                1,
                TradeUnit.MILLIAMPERE_HOUR.toSi(2200),
                4.4,
                66.0,
                null,
                "",
                null,
                "",
                Pack.Identity.CONFIRMED,
                List.of(),
                "");
    }

    /** The day after the fixtures' now, everything wanted from ten on. */
    static OutingForm lakeDay(String day) {
        return new OutingForm(
                "Lake day",
                day,
                "UTC",
                "08:00",
                "09:00",
                "15:00",
                "16:00",
                "18C",
                "home day before 19:00 to 22:30\nfield 09:00 to 15:00\nhome 16:30 to 22:00",
                "home: bench on house\nfield: outdoor on trolley; 85 %",
                "A1, A2, A3, B1, C1",
                "Heron x4; value 3; 09:30 to 14:30; 6 min; gap 10 min",
                "",
                "",
                "");
    }
}
