package fettle.book.intake;

import fettle.engine.units.Faults;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What the columns of a log are taken for, and which way its current counts. Good for every log with the same headings.
 *
 * @param columns all its columns, in order
 * @param positive what a positive current means
 */
public record Mapping(List<Column> columns, PositiveCurrent positive) {
    public Mapping {
        columns = List.copyOf(columns);
    }

    /** The headings, by which logs of the same source are known again. */
    public String headings() {
        return columns.stream().map(Column::name).collect(Collectors.joining("\u001F"));
    }

    public Optional<Column> of(ColumnRole role) {
        return columns.stream().filter(column -> column.role() == role).findFirst();
    }

    /** Columns of cells' volts, in the order of the cells. */
    public List<Column> cells() {
        return columns.stream()
                .filter(column -> column.role() == ColumnRole.CELL_VOLTS)
                .sorted((a, b) -> Integer.compare(a.cell(), b.cell()))
                .toList();
    }

    Mapping with(PositiveCurrent meaning) {
        return new Mapping(columns, meaning);
    }

    /**
     * Refuses a mapping that cannot be read by.
     *
     * @throws fettle.engine.units.InputException naming every fault
     */
    void requireReadable(String file) {
        Faults faults = new Faults();
        if (of(ColumnRole.TIME).isEmpty()) {
            faults.add(
                    "columns",
                    file + " has no column that is known as time. " + seen() + " Say which is, e.g. time=1:s.");
        }
        if (of(ColumnRole.PACK_VOLTS).isEmpty()
                && cells().isEmpty()
                && of(ColumnRole.AMPS).isEmpty()) {
            faults.add(
                    "columns",
                    file + " has no column that is known as volts or current. " + seen()
                            + " Say which is, e.g. volts=2:V,amps=3:A.");
        }
        List<Column> cells = cells();
        for (int cell = 1; cell <= cells.size(); cell++) {
            if (cells.get(cell - 1).cell() != cell) {
                faults.add(
                        "columns",
                        "the cells' columns are not numbered 1 to " + cells.size() + ", each once: "
                                + cells.stream().map(Column::label).collect(Collectors.joining(", "))
                                + ". Map them, e.g. cell1=4:V,cell2=5:V, and the others unused.");
                break;
            }
        }
        faults.refuse();
    }

    private String seen() {
        return "Its columns are " + columns.stream().map(Column::label).collect(Collectors.joining(", ")) + ".";
    }
}
