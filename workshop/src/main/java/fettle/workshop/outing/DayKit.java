package fettle.workshop.outing;

import fettle.engine.pack.Craft;
import fettle.engine.supply.Charger;
import fettle.engine.supply.Source;
import java.util.List;
import java.util.Optional;

/**
 * The kit an outing is planned with.
 *
 * @param packs the packs offered, as they are now
 * @param craft craft in use
 * @param chargers chargers in use
 * @param sources sources in use
 */
public record DayKit(List<PackAtHand> packs, List<Craft> craft, List<Charger> chargers, List<Source> sources) {
    public DayKit {
        packs = List.copyOf(packs);
        craft = List.copyOf(craft);
        chargers = List.copyOf(chargers);
        sources = List.copyOf(sources);
    }

    Optional<Craft> craft(String name) {
        return craft.stream().filter(one -> one.name().equalsIgnoreCase(name)).findFirst();
    }

    Optional<Charger> charger(String name) {
        return chargers.stream()
                .filter(one -> one.name().equalsIgnoreCase(name))
                .findFirst();
    }

    Optional<Source> source(String name) {
        return sources.stream().filter(one -> one.name().equalsIgnoreCase(name)).findFirst();
    }
}
