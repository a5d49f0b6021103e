package fettle.workshop.label;

import java.util.List;

/**
 * Labels to print at once.
 *
 * @param sheet the grid
 * @param start the first label of the first sheet that is used, from 1: a begun sheet can be used up
 * @param labels one for each pack, in order
 */
public record LabelRun(LabelGrid sheet, int start, List<PackLabel> labels) {
    public LabelRun {
        labels = List.copyOf(labels);
    }

    /** Sheets of paper needed. */
    public int sheets() {
        return (start - 1 + labels.size() + sheet.count() - 1) / sheet.count();
    }
}
