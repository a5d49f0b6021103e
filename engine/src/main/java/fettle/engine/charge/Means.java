package fettle.engine.charge;

import fettle.engine.pack.Assessment;
import fettle.engine.pack.Pack;
import fettle.engine.rule.Limits;
import fettle.engine.supply.Charger;
import fettle.engine.supply.Port;
import fettle.engine.supply.Source;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The chargers and sources there are, and which port serves a pack best. */
record Means(List<Charger> chargers, List<Source> sources) {
    Means {
        chargers = List.copyOf(chargers);
        sources = List.copyOf(sources);
    }

    /** The port that charges fastest within every limit; none if no charger takes the pack. */
    Optional<ChargeCurrent> bestCharge(Assessment assessment, Limits rules) {
        return fitting(assessment.pack())
                .map(place ->
                        ChargeCurrent.of(assessment, rules, place.charger(), place.port(), sourceOf(place.charger())))
                .max(Comparator.comparingDouble(ChargeCurrent::amps));
    }

    /** The port that brings a pack down to storage soonest within every limit; none if no port discharges it. */
    Optional<DischargeCurrent> bestDischarge(Pack pack) {
        return fitting(pack)
                .filter(place -> watts(place) > 0)
                .map(place -> DischargeCurrent.of(pack, place, watts(place)))
                .max(Comparator.comparingDouble(DischargeCurrent::amps));
    }

    /** The port with the largest bleed current for a pack. */
    Optional<Place> bestBleed(Pack pack) {
        return fitting(pack).filter(place -> amps(place) > 0).max(Comparator.comparingDouble(Means::amps));
    }

    private Stream<Place> fitting(Pack pack) {
        return chargers.stream()
                .filter(charger -> charger.chemistries().contains(pack.chemistry()))
                .flatMap(charger -> charger.ports().stream()
                        .filter(port -> port.maxCells() >= pack.cellsInSeries())
                        .map(port -> new Place(charger, port)));
    }

    private @Nullable Source sourceOf(Charger charger) {
        return sources.stream()
                .filter(source -> source.name().equalsIgnoreCase(charger.source()))
                .findFirst()
                .orElse(null);
    }

    private static double watts(Place place) {
        Double watts = place.port().dischargeWatts();
        return watts == null ? 0 : watts;
    }

    private static double amps(Place place) {
        Double amps = place.port().bleedAmps();
        return amps == null ? 0 : amps;
    }

    /** One port of one charger. */
    record Place(Charger charger, Port port) {
        String print() {
            return charger.name() + " port " + port.number();
        }
    }
}
