package fettle.book.record;

import fettle.engine.pack.Check;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;

/** Checks with their readings per cell. */
public final class CheckShape implements Shape<Check> {
    private static final String CELLS = "pack_check_cell";

    @Override
    public Kind kind() {
        return Kind.CHECK;
    }

    @Override
    public Row toRow(Check check, References references) {
        return Row.empty()
                .with("taken_at_utc", check.takenAt().toString())
                .with("pack_rest_volts", check.packRestVolts())
                .with("rest_seconds", check.restSeconds())
                .with("temperature_kelvins", check.temperatureKelvins())
                .with("resistance_method", check.resistanceMethod())
                .withFlag("swelling", check.signs().contains(Check.Sign.SWELLING))
                .withFlag("damage", check.signs().contains(Check.Sign.DAMAGE))
                .withFlag("smell", check.signs().contains(Check.Sign.SMELL))
                .with("note", check.note())
                .withParts(CELLS, cells(check.cellRestVolts(), check.cellResistanceOhms()));
    }

    @Override
    public Check fromRow(Row row, References references) {
        return new Check(
                InstantText.read(row, "taken_at_utc"),
                column(row, "rest_volts"),
                row.realOrNull("pack_rest_volts"),
                row.realOrNull("rest_seconds"),
                row.realOrNull("temperature_kelvins"),
                column(row, "resistance_ohms"),
                row.text("resistance_method"),
                signs(row),
                row.text("note"));
    }

    /** One row per cell; where fewer of one reading were taken, the last cells have none. */
    private static List<Row> cells(List<Double> restVolts, List<Double> resistanceOhms) {
        List<Row> rows = new ArrayList<>();
        for (int cell = 0; cell < Math.max(restVolts.size(), resistanceOhms.size()); cell++) {
            rows.add(Row.empty()
                    .with("rest_volts", cell < restVolts.size() ? restVolts.get(cell) : null)
                    .with("resistance_ohms", cell < resistanceOhms.size() ? resistanceOhms.get(cell) : null));
        }
        return rows;
    }

    private static List<Double> column(Row row, String name) {
        return row.parts(CELLS).stream()
                .map(cell -> cell.realOrNull(name))
                .filter(Objects::nonNull)
                .toList();
    }

    private static Set<Check.Sign> signs(Row row) {
        Set<Check.Sign> signs = EnumSet.noneOf(Check.Sign.class);
        for (Check.Sign sign : Check.Sign.values()) {
            if (row.flag(sign.name().toLowerCase(Locale.ROOT))) {
                signs.add(sign);
            }
        }
        return signs;
    }
}
