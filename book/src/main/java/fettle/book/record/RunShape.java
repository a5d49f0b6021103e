package fettle.book.record;

import fettle.engine.pack.Run;

/** Runs. A registered craft is kept by id, so that the run follows its renaming; any other name is kept as noted. */
public final class RunShape implements Shape<Run> {
    @Override
    public Kind kind() {
        return Kind.RUN;
    }

    @Override
    public Row toRow(Run run, References references) {
        return Row.empty()
                .with("ended_at_utc", run.endedAt().toString())
                .with("craft_id", references.id(Kind.CRAFT, run.craft()))
                .with("craft_name", run.craft())
                .with("duration_seconds", run.durationSeconds())
                .with("remaining_fraction", run.remainingFraction())
                .with("remaining_pack_volts", run.remainingPackVolts())
                .with("warmest_kelvins", run.warmestKelvins())
                .with("note", run.note());
    }

    @Override
    public Run fromRow(Row row, References references) {
        String registered = references.name(Kind.CRAFT, row.wholeOrNull("craft_id"));
        return new Run(
                InstantText.read(row, "ended_at_utc"),
                registered == null ? row.text("craft_name") : registered,
                row.real("duration_seconds"),
                row.realOrNull("remaining_fraction"),
                row.realOrNull("remaining_pack_volts"),
                row.realOrNull("warmest_kelvins"),
                row.text("note"));
    }
}
