package fettle.book.record;

import fettle.engine.cell.Chemistry;
import fettle.engine.supply.Charger;
import fettle.engine.supply.Port;
import fettle.engine.units.InputException;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Chargers with their ports. A charger names its source, which must be registered, so that its power is known. */
public final class ChargerShape implements Shape<Charger> {
    private static final String CHEMISTRIES = "charger_chemistry";
    private static final String PORTS = "charger_port";

    @Override
    public Kind kind() {
        return Kind.CHARGER;
    }

    @Override
    public Row toRow(Charger charger, References references) {
        List<Row> chemistries = new TreeSet<>(charger.chemistries())
                .stream()
                        .map(chemistry -> Row.empty().with("chemistry", chemistry.name()))
                        .toList();
        return Row.empty()
                .with("name", charger.name())
                .with("total_watts", charger.totalWatts())
                .with("source_id", sourceId(charger.source(), references))
                .with("note", charger.note())
                .withParts(CHEMISTRIES, chemistries)
                .withParts(
                        PORTS,
                        charger.ports().stream().map(ChargerShape::portRow).toList());
    }

    @Override
    public Charger fromRow(Row row, References references) {
        Set<Chemistry> chemistries = row.parts(CHEMISTRIES).stream()
                .map(part -> Shape.constant(Chemistry.class, part, "chemistry"))
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Chemistry.class)));
        return new Charger(
                row.text("name"),
                row.realOrNull("total_watts"),
                chemistries,
                references.name(Kind.SOURCE, row.wholeOrNull("source_id")),
                row.parts(PORTS).stream().map(ChargerShape::port).toList(),
                row.text("note"));
    }

    private static @Nullable Long sourceId(@Nullable String source, References references) {
        Long id = references.id(Kind.SOURCE, source);
        if (source != null && id == null) {
            throw new InputException(
                    "source",
                    "source \"" + source + "\" is not in this book. Add the source first, or leave it empty.");
        }
        return id;
    }

    private static Row portRow(Port port) {
        return Row.empty()
                .with("number", port.number())
                .with("max_amps", port.maxAmps())
                .with("max_watts", port.maxWatts())
                .with("max_cells", port.maxCells())
                .with("bleed_amps", port.bleedAmps())
                .with("discharge_watts", port.dischargeWatts());
    }

    private static Port port(Row row) {
        return new Port(
                Math.toIntExact(row.whole("number")),
                row.real("max_amps"),
                row.real("max_watts"),
                Math.toIntExact(row.whole("max_cells")),
                row.realOrNull("bleed_amps"),
                row.realOrNull("discharge_watts"));
    }
}
