package fettle.workshop.entry;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.Craft;
import fettle.engine.pack.CraftKind;
import fettle.engine.pack.Pack;
import fettle.engine.rule.RuleSet;
import fettle.workshop.spelling.Spelling;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** An invented kit and a clock for tests of entry lines. */
final class LineFixtures implements KnownKit {
    static final Instant NOW = Instant.parse("2026-11-25T14:00:00Z");
    static final Clock CLOCK = Clock.fixed(NOW, ZoneId.of("Europe/Vienna"));

    static final List<Pack> PACKS = List.of(
            pack("P01", Chemistry.LIPO, 1, Pack.Identity.CONFIRMED),
            pack("P02", Chemistry.LIPO, 2, Pack.Identity.CONFIRMED),
            pack("P07", Chemistry.LIPO, 4, Pack.Identity.CONFIRMED),
            pack("P14", Chemistry.LIPO, 8, Pack.Identity.UNCONFIRMED),
            pack("F05", Chemistry.LIFEPO4, 4, Pack.Identity.CONFIRMED),
            pack("N06", Chemistry.NIMH, 6, Pack.Identity.CONFIRMED),
            pack("P99", Chemistry.LIPO, 4, Pack.Identity.CONFIRMED));
    private static final String RETIRED = "P99";
    private static final List<KnownPack> KNOWN =
            PACKS.stream().map(LineFixtures::known).toList();

    private static final List<Craft> CRAFT =
            List.of(craft("Kestrel", 4), craft("Kestrel 2", 4), craft("Brook Heron", 4), craft("Mudlark", 2));

    static LineReading read(String line) {
        return EntryLine.read(line, new LineFixtures(), CLOCK);
    }

    @Override
    public Optional<KnownPack> pack(String tag) {
        return KNOWN.stream()
                .filter(known -> known.pack().tag().equalsIgnoreCase(tag))
                .findFirst();
    }

    @Override
    public List<String> tagsNear(String tag) {
        return Spelling.nearest(tag, PACKS.stream().map(Pack::tag).toList(), 3);
    }

    @Override
    public Optional<Craft> craft(String name) {
        return CRAFT.stream()
                .filter(craft -> craft.name().equalsIgnoreCase(name))
                .findFirst();
    }

    @Override
    public List<String> craftNear(String name) {
        return Spelling.nearest(name, CRAFT.stream().map(Craft::name).toList(), 3);
    }

    private static KnownPack known(Pack pack) {
        return new KnownPack(
                pack,
                pack.tag().equals(RETIRED),
                RuleSet.of(List.of()).limitsFor(pack.chemistry(), pack.tag(), List.of()));
    }

    private static Pack pack(String tag, Chemistry chemistry, int cells, Pack.Identity identity) {
        LocalDate bought = LocalDate.of(2026, 1, 10);
        return new Pack(tag, chemistry, cells, 1, 18_000, null, null, null, "", bought, "", identity, List.of(), "");
    }

    private static Craft craft(String name, int cells) {
        return new Craft(name, CraftKind.GLIDER, cells, "", null, null, "", "");
    }
}
