package fettle.workshop.label;

import fettle.engine.units.InputException;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** Grids of labels on a sheet, named by paper and label size. The grid stands in the middle of its sheet. */
public enum LabelGrid {
    A4_38X21("a4-38x21", Paper.A4, 5, 13, 38.1, 21.2, 2.5, 0),
    A4_63X38("a4-63x38", Paper.A4, 3, 7, 63.5, 38.1, 2.5, 0),
    A4_70X36("a4-70x36", Paper.A4, 3, 8, 70, 36, 0, 0),
    A4_105X74("a4-105x74", Paper.A4, 2, 4, 105, 74, 0, 0),
    LETTER_67X25("letter-67x25", Paper.LETTER, 3, 10, 66.675, 25.4, 3.175, 0),
    LETTER_102X51("letter-102x51", Paper.LETTER, 2, 5, 101.6, 50.8, 4.7625, 0);

    /** What is printed where none was chosen. */
    public static final LabelGrid USUAL = A4_63X38;

    private final String key;
    private final Paper paper;
    private final int columns;
    private final int rows;
    private final double widthMillimetres;
    private final double heightMillimetres;
    private final double gapAcrossMillimetres;
    private final double gapDownMillimetres;

    LabelGrid(
            String key,
            Paper paper,
            int columns,
            int rows,
            double widthMillimetres,
            double heightMillimetres,
            double gapAcrossMillimetres,
            double gapDownMillimetres) {
        this.key = key;
        this.paper = paper;
        this.columns = columns;
        this.rows = rows;
        this.widthMillimetres = widthMillimetres;
        this.heightMillimetres = heightMillimetres;
        this.gapAcrossMillimetres = gapAcrossMillimetres;
        this.gapDownMillimetres = gapDownMillimetres;
    }

    /** The grid of a key, e.g. {@code a4-63x38}; throws {@link InputException} for another. */
    public static LabelGrid of(String key) {
        return Arrays.stream(values())
                .filter(grid -> grid.key.equalsIgnoreCase(key.strip()))
                .findFirst()
                .orElseThrow(() -> new InputException(
                        "sheet",
                        "sheet is \"" + key + "\"; expected one of "
                                + Arrays.stream(values()).map(LabelGrid::key).collect(Collectors.joining(", "))
                                + ". Measure one label of your sheet and choose the nearest."));
    }

    /** Paper and label size in whole millimetres. */
    public String key() {
        return key;
    }

    public Paper paper() {
        return paper;
    }

    /** Labels on one sheet. */
    public int count() {
        return columns * rows;
    }

    public double widthMillimetres() {
        return widthMillimetres;
    }

    public double heightMillimetres() {
        return heightMillimetres;
    }

    /** Left edge of a label, counted along rows from 0. */
    public double leftMillimetres(int place) {
        double grid = columns * widthMillimetres + (columns - 1) * gapAcrossMillimetres;
        return (paper.widthMillimetres() - grid) / 2 + place % columns * (widthMillimetres + gapAcrossMillimetres);
    }

    /** Upper edge of a label, counted along rows from 0. */
    public double topMillimetres(int place) {
        double grid = rows * heightMillimetres + (rows - 1) * gapDownMillimetres;
        return (paper.heightMillimetres() - grid) / 2
                + Math.floorDiv(place, columns) * (heightMillimetres + gapDownMillimetres);
    }

    /** Its measures in words. */
    public String description() {
        return String.format(
                Locale.ROOT,
                "%s, %d × %d labels of %.1f × %.1f mm",
                paper.label(),
                columns,
                rows,
                widthMillimetres,
                heightMillimetres);
    }
}
