package fettle.desk.setup;

import fettle.engine.control.linkage.RodEnds;
import fettle.engine.control.linkage.TravelPoint;
import fettle.workshop.worksheet.LinkageStudy;
import java.util.Locale;

/**
 * A linkage at one pulse, in millimetres from the servo shaft with y downwards, as SVG wants it.
 *
 * @param viewBox what is shown, all the travel with a margin
 * @param hingeX hinge
 * @param hingeY hinge
 * @param armX hole of the arm
 * @param armY hole of the arm
 * @param hornX hole of the horn
 * @param hornY hole of the horn
 * @param edgeX trailing edge
 * @param edgeY trailing edge
 * @param neutralX trailing edge at neutral
 * @param armLength radius of the arm
 */
public record LinkageDrawing(
        String viewBox,
        String hingeX,
        String hingeY,
        String armX,
        String armY,
        String hornX,
        String hornY,
        String edgeX,
        String edgeY,
        String neutralX,
        String armLength) {
    private static final double MILLIMETRES = 1000;
    private static final double MARGIN = 6;

    static LinkageDrawing of(LinkageStudy study, TravelPoint point) {
        RodEnds ends = study.linkage().rodEnds(point.position());
        double hingeX = study.linkage().hingeXMetres();
        double hingeY = study.linkage().hingeYMetres();
        double chord = study.drive().chordMetres();
        double surface = point.position().surfaceRadians();
        return new LinkageDrawing(
                viewBox(study),
                across(hingeX),
                down(hingeY),
                across(ends.armXMetres()),
                down(ends.armYMetres()),
                across(ends.hornXMetres()),
                down(ends.hornYMetres()),
                across(hingeX + chord * Math.cos(surface)),
                down(hingeY + chord * Math.sin(surface)),
                across(hingeX + chord),
                across(study.linkage().armMetres()));
    }

    /** A length or a place aft, in millimetres. */
    static String across(double metres) {
        return String.format(Locale.ROOT, "%.2f", MILLIMETRES * metres);
    }

    /** A place above the shaft, in millimetres downwards. */
    static String down(double metres) {
        return across(0 - metres);
    }

    private static String viewBox(LinkageStudy study) {
        double left = -study.linkage().armMetres();
        double right = study.linkage().armMetres();
        double low = -study.linkage().armMetres();
        double high = study.linkage().armMetres();
        double hingeX = study.linkage().hingeXMetres();
        double hingeY = study.linkage().hingeYMetres();
        double chord = study.drive().chordMetres();
        for (TravelPoint point : study.travel().points()) {
            RodEnds ends = study.linkage().rodEnds(point.position());
            double surface = point.position().surfaceRadians();
            left = Math.min(left, Math.min(ends.hornXMetres(), hingeX));
            right = Math.max(right, Math.max(ends.hornXMetres(), hingeX + chord));
            low = Math.min(low, Math.min(ends.hornYMetres(), hingeY + chord * Math.min(0, Math.sin(surface))));
            high = Math.max(high, Math.max(ends.hornYMetres(), hingeY + chord * Math.max(0, Math.sin(surface))));
        }
        double margin = MARGIN / MILLIMETRES;
        return across(left - margin) + " " + down(high + margin) + " " + across(right - left + 2 * margin) + " "
                + across(high - low + 2 * margin);
    }
}
