package fettle.desk.setup;

import fettle.desk.kit.FormPage;
import fettle.engine.control.Remark;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A linkage with its fields, drawing and curves.
 *
 * @param lines its fields
 * @param faults sentences that belong to no field
 * @param craft craft whose latest sweep is drawn; empty for none
 * @param surface its surface
 * @param picture the drawing and its curves; {@code null} before it was asked for, or where it was refused
 */
public record LinkagePage(
        List<FormPage.Line> lines,
        List<String> faults,
        String craft,
        String surface,
        @Nullable Picture picture) {
    public String sheetHref() {
        return SetUpsPage.href(craft);
    }

    /**
     * The drawing at one pulse and the curves of the whole travel.
     *
     * @param lowest lowest pulse [µs]
     * @param highest highest pulse [µs]
     * @param pulse pulse drawn [µs]
     * @param centre centre [µs]
     * @param drawing the drawing
     * @param reading the figures at that pulse
     * @param panels the curves
     * @param cursor where the pulse stands in them
     * @param bracket the usable span; {@code null} if it is not known
     * @param table every microsecond, for the slider, as JSON
     * @param remarks doubts
     * @param cautions what to mind
     */
    public record Picture(
            long lowest,
            long highest,
            long pulse,
            long centre,
            LinkageDrawing drawing,
            String reading,
            List<Panel> panels,
            String cursor,
            @Nullable Bracket bracket,
            String table,
            List<Remark> remarks,
            List<String> cautions) {}
}
