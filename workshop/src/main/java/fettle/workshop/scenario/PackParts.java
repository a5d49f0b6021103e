package fettle.workshop.scenario;

import fettle.engine.pack.simulation.Bench;
import fettle.engine.pack.simulation.CellAt;
import fettle.engine.pack.simulation.PackCircuit;
import fettle.engine.pack.simulation.SeriesGroup;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

/** Reads packs: places in series, each one cell or several side by side. */
final class PackParts {
    private static final List<String> PACK_KEYS = List.of("name", "lead_ohms", "cells");
    private static final List<String> CELL_KEYS = Stream.concat(
                    CellParts.KEYS.stream(), Stream.of("charge", "temperature_celsius", "bleed_ohms", "count"))
            .toList();
    private static final List<String> PLACE_KEYS = List.of("side_by_side", "bleed_ohms", "count");
    private static final int MOST_ALIKE = 1000;

    private final Refusing refusing;
    private final CellParts cells;
    private final double ambientKelvins;

    PackParts(Refusing refusing, CellParts cells, double ambientKelvins) {
        this.refusing = refusing;
        this.cells = cells;
        this.ambientKelvins = ambientKelvins;
    }

    PackCircuit pack(Placed value, int position) {
        Part pack = Part.of(refusing, "a pack", value, PACK_KEYS);
        String name = pack.text("name").orElse("pack " + position);
        List<SeriesGroup> places = new ArrayList<>();
        List<Placed> items = Part.items(refusing, "cells", pack.wanted("cells"));
        pack.each(items, item -> places(name, item)).forEach(places::addAll);
        PackCircuit read = new PackCircuit(name, places, pack.figure("lead_ohms", 0));
        if (items.isEmpty() || !places.isEmpty()) { // otherwise every cell has been refused already
            refusing.engine(pack.fields(), () -> Bench.of(read, ambientKelvins));
        }
        return read;
    }

    private List<SeriesGroup> places(String pack, Placed value) {
        boolean sideBySide =
                value instanceof Placed.Fields fields && fields.values().containsKey("side_by_side");
        Part place = Part.of(refusing, "a cell", value, sideBySide ? PLACE_KEYS : CELL_KEYS);
        List<CellAt> members = sideBySide
                ? place.items("side_by_side").stream().flatMap(this::alike).toList()
                : List.of(cell(place));
        double bleedOhms = place.figure("bleed_ohms", Double.POSITIVE_INFINITY);
        SeriesGroup read = new SeriesGroup(members, bleedOhms);
        refusing.engine(place.fields(), () -> Bench.of(new PackCircuit(pack, List.of(read), 0), ambientKelvins));
        return Collections.nCopies(place.count("count", 1, MOST_ALIKE), read);
    }

    private Stream<CellAt> alike(Placed value) {
        List<String> keys =
                CELL_KEYS.stream().filter(key -> !key.equals("bleed_ohms")).toList();
        Part cell = Part.of(refusing, "a cell", value, keys);
        return Collections.nCopies(cell.count("count", 1, MOST_ALIKE), cell(cell)).stream();
    }

    private CellAt cell(Part cell) {
        double kelvins = cell.optional("temperature_celsius").stream()
                .map(TradeUnit.CELSIUS::toSi)
                .findFirst()
                .orElse(ambientKelvins);
        return new CellAt(cells.circuit(cell), cell.figure("charge"), kelvins);
    }
}
