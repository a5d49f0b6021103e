package fettle.book.intake;

/**
 * One column of a log and what it is taken for.
 *
 * @param index its place, from 0
 * @param name its heading as written; {@code column 3} where there is none
 * @param role what it is used for
 * @param cell which cell, from 1; 0 unless it is one cell's volts
 * @param unit the unit of its fields
 * @param sure false where name or unit did not say so and the figures were gone by
 */
public record Column(int index, String name, ColumnRole role, int cell, ColumnUnit unit, boolean sure) {
    Column as(ColumnRole newRole, int newCell, ColumnUnit newUnit) {
        return new Column(index, name, newRole, newCell, newUnit, true);
    }

    Column unused() {
        return new Column(index, name, ColumnRole.UNUSED, 0, ColumnUnit.NONE, true);
    }

    /** How people refer to it: {@code column 4 (Current)}. */
    String label() {
        return "column " + (index + 1) + " (" + name + ")";
    }
}
