package fettle.book.intake;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Takes the figures of one row by a mapping: SI, current turned to discharge positive. */
final class RowFields {
    private final String file;
    private final char decimal;
    private final Column time;
    private final Optional<Column> date;
    private final Optional<Column> wallClock;
    private final @Nullable Column[] places;
    private final double currentFactor;
    private final boolean stamped;
    private final List<Column> columns;

    RowFields(String file, Preview preview) {
        Mapping mapping = preview.mapping();
        mapping.requireReadable(file);
        this.file = file;
        this.decimal = preview.dialect().decimal();
        this.columns = mapping.columns();
        this.time = mapping.of(ColumnRole.TIME).orElseThrow();
        this.stamped = time.unit().isStamp();
        this.date = mapping.of(ColumnRole.DATE);
        this.wallClock = mapping.of(ColumnRole.WALL_CLOCK);
        List<Column> cells = mapping.cells();
        this.places = new Column[Samples.FIRST_CELL + cells.size()];
        places[Samples.PACK] = mapping.of(ColumnRole.PACK_VOLTS).orElse(null);
        places[Samples.AMPS] = mapping.of(ColumnRole.AMPS).orElse(null);
        places[Samples.TEMPERATURE] = mapping.of(ColumnRole.TEMPERATURE).orElse(null);
        for (int cell = 0; cell < cells.size(); cell++) {
            places[Samples.FIRST_CELL + cell] = cells.get(cell);
        }
        this.currentFactor = mapping.positive().toDischargePositive();
    }

    /** Whether stamps start again at midnight. */
    boolean isClock() {
        return time.unit() == ColumnUnit.CLOCK && date.isEmpty();
    }

    /** Whether a row is the headings once more, as loggers write that append. */
    boolean isHeading(LogRow row) {
        int same = 0;
        for (Column column : columns) {
            same += row.field(column.index()).strip().equals(column.name()) ? 1 : 0;
        }
        return same >= 2;
    }

    /** The row's stamp [s]; {@code NaN} if it has none. */
    double seconds(LogRow row) {
        if (row.isBlank(time.index())) {
            return Double.NaN;
        }
        if (!stamped) {
            return time.unit().toSi(number(row, time));
        }
        String field = row.field(time.index());
        try {
            double seconds = Stamps.seconds(field, time.unit());
            if (date.isPresent() && time.unit() == ColumnUnit.CLOCK) {
                seconds += Stamps.DAY_SECONDS
                        * Stamps.day(row.field(date.get().index()), date.get().unit());
            }
            return seconds;
        } catch (NumberFormatException wrong) {
            throw new FieldException(where(row, time) + "\"" + shown(field) + "\" is not a time written "
                    + time.unit().symbol() + ". Correct or delete the line, or choose the time's format.");
        }
    }

    /** The instant of a row, where the log says it. */
    @Nullable
    Instant instant(LogRow row, ZoneId zone) {
        Column dated = wallClock.orElse(time);
        String field = row.field(dated.index());
        if (dated.unit().isUnix()) {
            double seconds = dated.unit().toSi(number(row, dated));
            return Double.isFinite(seconds) ? Instant.ofEpochMilli(Math.round(seconds * 1000)) : null;
        }
        boolean apart = dated.unit() == ColumnUnit.CLOCK && date.isPresent();
        if (!dated.unit().isDated() && !apart) {
            return null;
        }
        double seconds = apart ? seconds(row) : Stamps.seconds(field, dated.unit());
        if (!apart && Stamps.hasZone(field)) {
            return Instant.ofEpochMilli(Math.round(seconds * 1000));
        }
        long millis = Math.round(seconds * 1000);
        LocalDateTime local = LocalDateTime.ofInstant(Instant.ofEpochMilli(millis), ZoneOffset.UTC);
        return local.atZone(zone).toInstant();
    }

    /** The figures in the order of {@link Samples}, the place of the time left free; {@code NaN} where missing. */
    double[] values(LogRow row) {
        double[] values = new double[places.length];
        for (int i = Samples.PACK; i < values.length; i++) {
            Column column = places[i];
            values[i] = column == null ? Double.NaN : column.unit().toSi(number(row, column));
        }
        // Adding zero makes a turned −0 a plain 0.
        values[Samples.AMPS] = values[Samples.AMPS] * currentFactor + 0.0;
        return values;
    }

    private double number(LogRow row, Column column) {
        try {
            return row.number(column.index(), decimal);
        } catch (NumberFormatException wrong) {
            String field = row.field(column.index());
            throw new FieldException(
                    where(row, column) + "\"" + shown(field) + "\" is not a number; expected a decimal "
                            + (decimal == ',' ? "comma" : "point") + ". Correct or delete the line.");
        }
    }

    private String where(LogRow row, Column column) {
        return file + " line " + row.line() + ", " + column.label() + ": ";
    }

    private static String shown(String field) {
        String plain = field.strip().replaceAll("\\p{Cntrl}", "?");
        return plain.length() > 40 ? plain.substring(0, 40) + "…" : plain;
    }
}
