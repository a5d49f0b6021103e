package fettle.book.record;

import fettle.engine.pack.ChargeRecord;

/** Charges as noted by hand. */
public final class ChargeShape implements Shape<ChargeRecord> {
    @Override
    public Kind kind() {
        return Kind.CHARGE;
    }

    @Override
    public Row toRow(ChargeRecord charge, References references) {
        return Row.empty()
                .with("ended_at_utc", charge.endedAt().toString())
                .with("returned_coulombs", charge.returnedCoulombs())
                .with("end_pack_volts", charge.endPackVolts())
                .with("warmest_kelvins", charge.warmestKelvins())
                .with("note", charge.note());
    }

    @Override
    public ChargeRecord fromRow(Row row, References references) {
        return new ChargeRecord(
                InstantText.read(row, "ended_at_utc"),
                row.realOrNull("returned_coulombs"),
                row.realOrNull("end_pack_volts"),
                row.realOrNull("warmest_kelvins"),
                row.text("note"));
    }
}
