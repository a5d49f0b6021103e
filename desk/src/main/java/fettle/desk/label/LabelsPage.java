package fettle.desk.label;

import fettle.desk.frame.Back;
import fettle.desk.paper.Drawing;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The form of labels with what it prints.
 *
 * @param packs every pack in use, ticked if it is to have a label
 * @param grids every sheet, the chosen one marked
 * @param start first label used
 * @param address where codes lead; empty for the tag alone
 * @param here the desk's own address as a phone on the same network would open it; {@code null} on the loopback
 * @param fault why nothing is printed; empty if something is
 * @param sheets the sheets
 * @param pdf where the same is as PDF
 * @param unconfirmed tags of packs whose label cannot name a charge limit
 */
public record LabelsPage(
        List<Choice> packs,
        List<Choice> grids,
        String start,
        String address,
        @Nullable String here,
        String fault,
        List<Drawing> sheets,
        String pdf,
        List<String> unconfirmed) {

    /** One thing to choose. */
    public record Choice(String value, String label, boolean chosen) {}

    /** The address of the same choice as PDF. */
    static String pdf(List<String> tags, String sheet, String start, String address) {
        StringBuilder query = new StringBuilder("/kit/labels.pdf?sheet=" + Back.encode(sheet) + "&start="
                + Back.encode(start) + "&address=" + Back.encode(address));
        tags.forEach(tag -> query.append("&pack=").append(Back.encode(tag)));
        return query.toString();
    }
}
