package fettle.workshop;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.Check;
import fettle.engine.pack.Pack;
import fettle.engine.supply.Source;
import fettle.engine.supply.SourceKind;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;

/** Invented packs and readings for tests of the workshop. */
final class WorkshopFixtures {
    static final Instant MORNING = Instant.parse("2026-06-01T07:00:00Z");

    private WorkshopFixtures() {}

    static Workshop open(Path folder) {
        return Workshop.open(folder, Clock.fixed(MORNING, ZoneOffset.UTC), "Marten");
    }

    static Pack pack(String tag) {
        return pack(tag, "");
    }

    static Pack pack(String tag, String keeper) {
        return new Pack(
                tag,
                Chemistry.LIPO,
                4,
                1,
                18_000,
                null,
                null,
                null,
                "",
                null,
                keeper,
                Pack.Identity.CONFIRMED,
                List.of(),
                "");
    }

    static Source source(String name) {
        return new Source(name, SourceKind.MAINS, 600, null, "");
    }

    static Check check(Instant at, Double... volts) {
        return new Check(at, List.of(volts), null, 7_200.0, 294.15, List.of(), "", Set.of(), "");
    }
}
