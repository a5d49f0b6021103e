package fettle.desk.trace;

import fettle.workshop.TraceChoices;
import fettle.workshop.TracePreview;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What a log given would be read as, to be confirmed or corrected.
 *
 * @param token what the log waits under
 * @param pack tag of the pack it is of
 * @param dialect how its table is written
 * @param columns its columns and their uses
 * @param positive what a positive current means: discharge, charge or unclear
 * @param why what that was told from
 * @param questions what must be said before it can be kept
 * @param zone zone of its clock, as typed
 * @param note note, as typed
 * @param onePack whether it was said to be all one pack
 * @param faults why it was refused; none if it was not
 */
public record LookPage(
        String token,
        String pack,
        String file,
        String dialect,
        List<Column> columns,
        String positive,
        String why,
        List<String> questions,
        String zone,
        String note,
        boolean onePack,
        List<String> faults) {
    private static final int MOST_CELLS = 24;

    /**
     * One column.
     *
     * @param number from 1
     * @param use its use as the mapping writes it, e.g. {@code cell2}
     * @param sure false where it was told by its figures alone
     * @param samples its first figures, as written
     */
    public record Column(int number, String name, String use, String unit, boolean sure, String samples) {}

    /** Uses a column can be put to. */
    public List<String> uses() {
        List<String> uses =
                new ArrayList<>(List.of("unused", "time", "date", "wallclock", "volts", "amps", "temperature"));
        IntStream.rangeClosed(1, MOST_CELLS).forEach(cell -> uses.add("cell" + cell));
        return uses;
    }

    static LookPage of(String token, String pack, TracePreview preview, TraceChoices choices, List<String> faults) {
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < preview.columns().size(); i++) {
            TracePreview.ColumnUse use = preview.columns().get(i);
            columns.add(new Column(
                    i + 1, use.name(), use.use().replace(" ", ""), use.unit(), use.sure(), samples(preview, i)));
        }
        return new LookPage(
                token,
                pack,
                preview.file(),
                preview.dialect(),
                columns,
                preview.positive(),
                preview.why(),
                preview.questions(),
                choices.zone(),
                choices.note(),
                choices.packs().equals("one"),
                faults);
    }

    private static String samples(TracePreview preview, int column) {
        return String.join(
                " · ",
                preview.rows().stream()
                        .limit(3)
                        .map(row -> column < row.size() ? row.get(column) : "")
                        .toList());
    }
}
