package fettle.book.intake;

import de.siegmar.fastcsv.reader.CsvRecord;
import fettle.engine.units.InputException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Looks at the beginning of a log and says what it would be read as. */
public final class LogPreview {
    private static final int BEGINNING_CHARACTERS = 2_000_000;
    private static final int FIRST_CHARACTERS = 16_384;
    private static final int HEAD_CHARACTERS = 200_000;
    private static final int ROWS_SHOWN = 5;
    private static final double MILLIVOLTS_FROM = 500;
    private static final double UNIX_FROM = 1e8;
    private static final double UNIX_MILLIS_FROM = 1e11;
    private static final double MILLISECOND_STEP = 5;

    private LogPreview() {}

    /**
     * Looks at a log.
     *
     * @param choices what a person says about it
     * @param saved mapping of an earlier log with the same headings; {@code null} if there is none
     * @throws InputException if it is no table, or choices name columns it does not have
     */
    public static Preview of(LogFile file, ReadingChoices choices, @Nullable Mapping saved) {
        String beginning;
        String encoding;
        try (LogText.Opened text = LogText.open(file, ReadingProgress.NONE)) {
            beginning = read(text);
            encoding = text.encoding().charset().name();
        } catch (IOException unreadable) {
            throw new InputException("file", file.name() + " cannot be read: " + unreadable.getMessage() + ".");
        }
        int lineEnd = beginning.lastIndexOf('\n', Math.min(HEAD_CHARACTERS, beginning.length()));
        String head = beginning.length() > HEAD_CHARACTERS && lineEnd > 0 ? beginning.substring(0, lineEnd) : beginning;
        DialectSniffer.Found found = DialectSniffer.sniff(file.name(), head, encoding);
        boolean known = saved != null && matches(saved, found);
        List<Column> columns = known ? saved.columns() : recognise(found);
        Mapping mapping = new Mapping(choices.over(columns), PositiveCurrent.UNCLEAR);
        Preview preview = withSign(file.name(), found, mapping, choices, saved, beginning);
        boolean told = known || choices.columns().stream().anyMatch(LogPreview::isOfAPack);
        return told
                ? preview
                : SeveralPacks.question(file.name(), every(found), found.rows())
                        .map(preview::asking)
                        .orElse(preview);
    }

    /** Whether a choice tells packs apart: any but that of time and temperature. */
    private static boolean isOfAPack(ReadingChoices.Choice choice) {
        return choice.role() == ColumnRole.PACK_VOLTS
                || choice.role() == ColumnRole.CELL_VOLTS
                || choice.role() == ColumnRole.AMPS
                || choice.role() == ColumnRole.UNUSED;
    }

    private static String read(LogText.Opened text) throws IOException {
        char[] into = new char[FIRST_CHARACTERS];
        int size = 0;
        for (int count = 0; count >= 0 && size < BEGINNING_CHARACTERS; size += Math.max(0, count)) {
            if (size == into.length) {
                into = Arrays.copyOf(into, Math.min(2 * size, BEGINNING_CHARACTERS));
            }
            count = text.reader().read(into, size, into.length - size);
        }
        return new String(into, 0, size);
    }

    private static boolean matches(Mapping saved, DialectSniffer.Found found) {
        return saved.columns().stream().map(Column::name).toList().equals(names(found));
    }

    private static List<String> names(DialectSniffer.Found found) {
        return recognise(found).stream().map(Column::name).toList();
    }

    private static List<Column> recognise(DialectSniffer.Found found) {
        return onlyFirst(every(found));
    }

    /** Every column by itself: two may be taken for the same. */
    private static List<Column> every(DialectSniffer.Found found) {
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < found.headings().size(); i++) {
            Column column = ColumnNames.recognise(
                    i, found.headings().get(i), found.units().get(i));
            columns.add(byFigures(column, found));
        }
        return columns;
    }

    /** Settles from the figures what a heading leaves open: stamps, and milli or not. */
    private static Column byFigures(Column column, DialectSniffer.Found found) {
        List<String> fields = found.rows().stream()
                .map(row -> column.index() < row.getFieldCount() ? row.getField(column.index()) : "")
                .filter(field -> !field.isBlank())
                .toList();
        if (column.role() == ColumnRole.DATE || column.role() == ColumnRole.TIME) {
            Optional<ColumnUnit> stamp = StampFormats.of(fields);
            if (stamp.isPresent()) {
                return column.as(column.role(), 0, stamp.get());
            }
        }
        if (column.role() == ColumnRole.UNUSED || column.unit() != ColumnUnit.NONE) {
            return column;
        }
        char decimal = found.dialect().decimal();
        double[] figures = fields.stream()
                .filter(field -> NumberText.isNumber(field, decimal))
                .mapToDouble(field -> Math.abs(NumberText.read(field, decimal)))
                .toArray();
        double middle = Arrays.stream(figures)
                .sorted()
                .skip(figures.length / 2)
                .findFirst()
                .orElse(0);
        ColumnUnit unit = switch (column.role()) {
            case PACK_VOLTS, CELL_VOLTS -> middle >= MILLIVOLTS_FROM ? ColumnUnit.MILLIVOLT : ColumnUnit.VOLT;
            case AMPS -> middle >= MILLIVOLTS_FROM ? ColumnUnit.MILLIAMPERE : ColumnUnit.AMPERE;
            case TEMPERATURE -> ColumnUnit.CELSIUS;
            case TIME -> timeUnit(middle, figures);
            default -> ColumnUnit.NONE;
        };
        return new Column(column.index(), column.name(), column.role(), column.cell(), unit, false);
    }

    private static ColumnUnit timeUnit(double middle, double[] figures) {
        if (middle >= UNIX_FROM) {
            return middle >= UNIX_MILLIS_FROM ? ColumnUnit.UNIX_MILLISECOND : ColumnUnit.UNIX_SECOND;
        }
        double step =
                figures.length < 2 ? 0 : Math.abs(figures[figures.length - 1] - figures[0]) / (figures.length - 1);
        return step >= MILLISECOND_STEP ? ColumnUnit.MILLISECOND : ColumnUnit.SECOND;
    }

    /** Of several columns of one kind the first is used; a wall clock stands in where there is no other time. */
    private static List<Column> onlyFirst(List<Column> columns) {
        List<Column> result = new ArrayList<>();
        for (Column column : columns) {
            boolean again = column.role() != ColumnRole.UNUSED
                    && result.stream()
                            .anyMatch(before -> before.role() == column.role() && before.cell() == column.cell());
            result.add(again ? column.unused() : column);
        }
        boolean timed = result.stream().anyMatch(column -> column.role() == ColumnRole.TIME);
        return timed
                ? result
                : result.stream()
                        .map(column -> column.role() == ColumnRole.WALL_CLOCK
                                ? column.as(ColumnRole.TIME, 0, column.unit())
                                : column)
                        .toList();
    }

    private static Preview withSign(
            String file,
            DialectSniffer.Found found,
            Mapping mapping,
            ReadingChoices choices,
            @Nullable Mapping saved,
            String beginning) {
        SignFinder.Finding finding = sign(found, mapping, choices, saved, beginning);
        List<String> questions = new ArrayList<>();
        if (mapping.of(ColumnRole.AMPS).isPresent() && finding.positive() == PositiveCurrent.UNCLEAR) {
            questions.add("which sign of the current in " + file + " means discharge cannot be told: " + finding.why()
                    + ". Say whether positive means discharge or charge (--positive discharge or --positive charge).");
        }
        List<List<String>> shown = found.rows().stream()
                .limit(ROWS_SHOWN)
                .map(CsvRecord::getFields)
                .toList();
        return new Preview(file, found.dialect(), mapping.with(finding.positive()), finding.why(), shown, questions);
    }

    private static SignFinder.Finding sign(
            DialectSniffer.Found found,
            Mapping mapping,
            ReadingChoices choices,
            @Nullable Mapping saved,
            String beginning) {
        if (mapping.of(ColumnRole.AMPS).isEmpty()) {
            return new SignFinder.Finding(PositiveCurrent.DISCHARGES, "no current was logged");
        }
        PositiveCurrent chosen = choices.positive();
        if (chosen != null && chosen != PositiveCurrent.UNCLEAR) {
            return new SignFinder.Finding(chosen, "as you say");
        }
        if (BatteryDataFormat.hasStatedSign(mapping)) {
            return new SignFinder.Finding(PositiveCurrent.CHARGES, "the battery data format states it");
        }
        if (saved != null && saved.positive() != PositiveCurrent.UNCLEAR && matches(saved, found)) {
            return new SignFinder.Finding(saved.positive(), "as with earlier logs of this source");
        }
        return SignSample.of(found, mapping, beginning);
    }
}
