package fettle.book.record;

import fettle.engine.supply.Source;
import fettle.engine.supply.SourceKind;

/** Sources. */
public final class SourceShape implements Shape<Source> {
    @Override
    public Kind kind() {
        return Kind.SOURCE;
    }

    @Override
    public Row toRow(Source source, References references) {
        return Row.empty()
                .with("name", source.name())
                .with("kind", source.kind().name())
                .with("max_watts", source.maxWatts())
                .with("energy_joules", source.energyJoules())
                .with("note", source.note());
    }

    @Override
    public Source fromRow(Row row, References references) {
        return new Source(
                row.text("name"),
                Shape.constant(SourceKind.class, row, "kind"),
                row.real("max_watts"),
                row.realOrNull("energy_joules"),
                row.text("note"));
    }
}
