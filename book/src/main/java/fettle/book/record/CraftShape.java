package fettle.book.record;

import fettle.engine.pack.Craft;
import fettle.engine.pack.CraftKind;

/** Craft. */
public final class CraftShape implements Shape<Craft> {
    @Override
    public Kind kind() {
        return Kind.CRAFT;
    }

    @Override
    public Row toRow(Craft craft, References references) {
        Integer cells = craft.cellsInSeries();
        return Row.empty()
                .with("name", craft.name())
                .with("kind", craft.kind().name())
                .with("cells_in_series", cells == null ? null : cells.longValue())
                .with("connector", craft.connector())
                .with("typical_amps", craft.typicalAmps())
                .with("peak_amps", craft.peakAmps())
                .with("keeper", craft.keeper())
                .with("note", craft.note());
    }

    @Override
    public Craft fromRow(Row row, References references) {
        Long cells = row.wholeOrNull("cells_in_series");
        return new Craft(
                row.text("name"),
                Shape.constant(CraftKind.class, row, "kind"),
                cells == null ? null : Math.toIntExact(cells),
                row.text("connector"),
                row.realOrNull("typical_amps"),
                row.realOrNull("peak_amps"),
                row.text("keeper"),
                row.text("note"));
    }
}
