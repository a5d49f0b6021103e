package fettle.engine.pack.simulation;

import java.util.List;

/**
 * One place in a series string: one cell, or several joined side by side.
 *
 * @param cells the cells side by side, at least one
 * @param bleedOhms a resistor across the place throughout [Ω]; infinite for none
 */
public record SeriesGroup(List<CellAt> cells, double bleedOhms) {
    public SeriesGroup {
        cells = List.copyOf(cells);
    }

    public static SeriesGroup of(CellAt cell) {
        return new SeriesGroup(List.of(cell), Double.POSITIVE_INFINITY);
    }
}
