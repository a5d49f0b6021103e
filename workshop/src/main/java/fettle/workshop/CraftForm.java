package fettle.workshop;

import static fettle.workshop.TypedFields.written;

import fettle.engine.pack.Craft;
import fettle.engine.pack.CraftKind;
import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A craft as typed by a person. Empty text means not stated; currents take {@code 25} or {@code 25 A}. */
public record CraftForm(
        String name,
        String kind,
        String cells,
        String connector,
        String typicalCurrent,
        String peakCurrent,
        String keeper,
        String note) {
    private static final Map<String, String> FIELD_OF =
            Map.of("cellsInSeries", "cells", "typicalAmps", "typicalCurrent", "peakAmps", "peakCurrent");

    /** The craft, or {@link InputException} with every fault, each at its field's name here. */
    public Craft toCraft() {
        TypedFields fields = new TypedFields();
        CraftKind known = fields.choice("kind", "kind", kind, CraftKind.values(), CraftKind::label);
        Integer series = fields.<@Nullable Integer>read("cells", this::cellsInSeries, null);
        Double typical =
                fields.optional("typicalCurrent", "typical current", typicalCurrent, Measure.CURRENT, TradeUnit.AMPERE);
        Double peak = fields.optional("peakCurrent", "peak current", peakCurrent, Measure.CURRENT, TradeUnit.AMPERE);
        return fields.make(
                () -> new Craft(
                        name.strip(), known, series, connector.strip(), typical, peak, keeper.strip(), note.strip()),
                FIELD_OF);
    }

    /** A craft as a person would type it. */
    public static CraftForm of(Craft craft) {
        Integer series = craft.cellsInSeries();
        return new CraftForm(
                craft.name(),
                craft.kind().label(),
                series == null ? "" : series + "S",
                craft.connector(),
                written(craft.typicalAmps(), Measure.CURRENT),
                written(craft.peakAmps(), Measure.CURRENT),
                craft.keeper(),
                craft.note());
    }

    private @Nullable Integer cellsInSeries() {
        if (cells.isBlank()) {
            return null;
        }
        CellsText typed = CellsText.parse(cells);
        if (typed.inParallel() > 1) {
            throw new InputException(
                    "cells", "cells are \"" + cells.strip() + "\"; a craft takes cells in series only, e.g. 6S.");
        }
        return typed.inSeries();
    }
}
