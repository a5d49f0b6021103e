package fettle.workshop;

import fettle.engine.pack.Craft;
import fettle.engine.pack.Pack;
import fettle.workshop.entry.KnownKit;
import fettle.workshop.entry.KnownPack;
import java.util.List;
import java.util.Optional;

/** The names of a book's kit, as entry lines use them. */
final class BookKit implements KnownKit {
    private final Shelf<Pack> packs;
    private final Shelf<Craft> craft;
    private final Rules rules;

    BookKit(Shelf<Pack> packs, Shelf<Craft> craft, Rules rules) {
        this.packs = packs;
        this.craft = craft;
        this.rules = rules;
    }

    @Override
    public Optional<KnownPack> pack(String tag) {
        return packs.named(tag).map(known -> new KnownPack(known.item(), known.retired(), rules.limits(known.item())));
    }

    @Override
    public List<String> tagsNear(String tag) {
        return near(tag, packs);
    }

    @Override
    public Optional<Craft> craft(String name) {
        return craft.named(name).map(Registered::item);
    }

    @Override
    public List<String> craftNear(String name) {
        return near(name, craft);
    }

    /** Names in use only: a retired one is no mend for a slip of the keyboard. */
    private static List<String> near(String name, Shelf<?> shelf) {
        List<String> inUse = shelf.list().stream()
                .filter(known -> !known.retired())
                .map(Registered::name)
                .toList();
        return NearNames.nearest(name, inUse);
    }
}
