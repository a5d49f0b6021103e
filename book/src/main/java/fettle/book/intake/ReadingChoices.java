package fettle.book.intake;

import fettle.engine.units.InputException;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a person says about a log before it is read.
 *
 * @param columns which column is what, where the headings do not say; none if they do
 * @param positive what a positive current means; {@code null} to find out
 * @param zone of clocks that name none
 */
public record ReadingChoices(List<Choice> columns, @Nullable PositiveCurrent positive, ZoneId zone) {
    public static final ReadingChoices NONE = new ReadingChoices(List.of(), null, ZoneOffset.UTC);

    private static final int MOST_NAMED = 20;

    public ReadingChoices {
        columns = List.copyOf(columns);
    }

    /**
     * One column's use as a person says it.
     *
     * @param role what it is
     * @param cell which cell; 0 unless one cell's volts
     * @param column its number from 1 or its heading
     * @param unit its unit; empty to go by its heading
     */
    public record Choice(ColumnRole role, int cell, String column, Optional<ColumnUnit> unit) {}

    /**
     * Reads {@code time=1:s,volts=Pack:mV,cell1=4,unused=Motor}.
     *
     * @throws InputException saying which part is not understood
     */
    public static List<Choice> parse(String written) {
        List<Choice> choices = new ArrayList<>();
        for (String part : written.split(",")) {
            if (!part.isBlank()) {
                choices.add(choice(part.strip()));
            }
        }
        return choices;
    }

    private static Choice choice(String part) {
        int equals = part.indexOf('=');
        String key = equals < 0 ? "" : part.substring(0, equals).strip().toLowerCase(Locale.ROOT);
        String rest = equals < 0 ? "" : part.substring(equals + 1).strip();
        int colon = rest.lastIndexOf(':');
        Optional<ColumnUnit> unit = colon < 0 ? Optional.empty() : ColumnUnit.written(rest.substring(colon + 1));
        String column = unit.isPresent() ? rest.substring(0, colon).strip() : rest;
        boolean cell = key.matches("cell\\d{1,2}");
        for (ColumnRole role : ColumnRole.values()) {
            if (!column.isEmpty()
                    && (cell ? role == ColumnRole.CELL_VOLTS : role.key().equals(key))) {
                return new Choice(role, cell ? Integer.parseInt(key.substring(4)) : 0, column, unit);
            }
        }
        throw new InputException(
                "columns",
                "\"" + part
                        + "\" is not understood; expected time=, volts=, amps=, temperature=, cell1=, date= or unused=,"
                        + " then a column's number or heading and perhaps :unit, e.g. volts=2:mV.");
    }

    /** The columns with what the person said put over what the headings say. */
    List<Column> over(List<Column> recognised) {
        List<Column> result = new ArrayList<>(recognised);
        for (Choice choice : columns) {
            int index = indexOf(choice, recognised);
            for (int i = 0; i < result.size(); i++) {
                boolean displaced = choice.role() != ColumnRole.UNUSED
                        && result.get(i).role() == choice.role()
                        && result.get(i).cell() == choice.cell();
                result.set(i, displaced ? result.get(i).unused() : result.get(i));
            }
            Column column = recognised.get(index);
            ColumnUnit unit = choice.unit().orElse(column.unit());
            result.set(
                    index,
                    new Column(
                            index,
                            column.name(),
                            choice.role(),
                            choice.cell(),
                            unit,
                            unit != ColumnUnit.NONE || choice.role() == ColumnRole.UNUSED));
        }
        return result;
    }

    private static int indexOf(Choice choice, List<Column> columns) {
        for (Column column : columns) {
            if (column.name().equalsIgnoreCase(choice.column())
                    || String.valueOf(column.index() + 1).equals(choice.column())) {
                return column.index();
            }
        }
        throw new InputException(
                "columns",
                "there is no column \"" + choice.column() + "\"; expected a number from 1 to " + columns.size()
                        + " or one of "
                        + columns.stream().map(Column::name).limit(MOST_NAMED).toList() + ".");
    }
}
