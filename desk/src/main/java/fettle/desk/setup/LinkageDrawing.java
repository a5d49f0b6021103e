package fettle.desk.setup;

import fettle.engine.control.linkage.FourBar;
import fettle.engine.control.linkage.RodEnds;
import fettle.engine.control.linkage.TravelPoint;
import fettle.workshop.worksheet.LinkageStudy;
import java.util.List;
import java.util.Locale;

/**
 * A linkage at one pulse, in millimetres from the servo shaft with y downwards, as SVG wants it.
 *
 * @param viewBox what is shown, all the travel with a margin
 * @param hingeX hinge
 * @param hingeY hinge
 * @param rods rod or cables; none for a torque rod, whose servo stands on the hinge line
 * @param edgeX trailing edge
 * @param edgeY trailing edge
 * @param neutralX trailing edge at neutral
 * @param armLength radius of the arm
 */
public record LinkageDrawing(
        String viewBox,
        String hingeX,
        String hingeY,
        List<Rod> rods,
        String edgeX,
        String edgeY,
        String neutralX,
        String armLength) {
    private static final double MILLIMETRES = 1000;
    private static final double MARGIN = 6;

    /** Radius drawn for a servo that has no arm [m]. */
    private static final double SHAFT = 0.004;

    public LinkageDrawing {
        rods = List.copyOf(rods);
    }

    /** Holes of arm and horn of one rod or cable. */
    public record Rod(String armX, String armY, String hornX, String hornY) {
        static Rod of(FourBar bar, TravelPoint point) {
            RodEnds ends = bar.rodEnds(point.position());
            return new Rod(
                    across(ends.armXMetres()),
                    down(ends.armYMetres()),
                    across(ends.hornXMetres()),
                    down(ends.hornYMetres()));
        }
    }

    static LinkageDrawing of(LinkageStudy study, TravelPoint point) {
        double chord = study.drive().chordMetres();
        double surface = point.position().surfaceRadians();
        return new LinkageDrawing(
                viewBox(study),
                across(hingeX(study)),
                down(hingeY(study)),
                rods(study, point),
                across(hingeX(study) + chord * Math.cos(surface)),
                down(hingeY(study) + chord * Math.sin(surface)),
                across(hingeX(study) + chord),
                across(armLength(study)));
    }

    static List<Rod> rods(LinkageStudy study, TravelPoint point) {
        return study.rods().stream().map(bar -> Rod.of(bar, point)).toList();
    }

    static double hingeX(LinkageStudy study) {
        return study.rods().stream()
                .mapToDouble(FourBar::hingeXMetres)
                .findFirst()
                .orElse(0);
    }

    static double hingeY(LinkageStudy study) {
        return study.rods().stream()
                .mapToDouble(FourBar::hingeYMetres)
                .findFirst()
                .orElse(0);
    }

    /** A length or a place aft, in millimetres. */
    static String across(double metres) {
        return String.format(Locale.ROOT, "%.2f", MILLIMETRES * metres);
    }

    /** A place above the shaft, in millimetres downwards. */
    static String down(double metres) {
        return across(0 - metres);
    }

    private static double armLength(LinkageStudy study) {
        return study.rods().stream().mapToDouble(FourBar::armMetres).findFirst().orElse(SHAFT);
    }

    private static String viewBox(LinkageStudy study) {
        double arm = armLength(study);
        double hingeX = hingeX(study);
        double hingeY = hingeY(study);
        double chord = study.drive().chordMetres();
        double left = Math.min(-arm, hingeX);
        double right = Math.max(arm, hingeX + chord);
        double low = Math.min(-arm, hingeY);
        double high = Math.max(arm, hingeY);
        for (TravelPoint point : study.travel().points()) {
            double edge = hingeY + chord * Math.sin(point.position().surfaceRadians());
            low = Math.min(low, edge);
            high = Math.max(high, edge);
            for (FourBar bar : study.rods()) {
                RodEnds ends = bar.rodEnds(point.position());
                left = Math.min(left, ends.hornXMetres());
                right = Math.max(right, ends.hornXMetres());
                low = Math.min(low, ends.hornYMetres());
                high = Math.max(high, ends.hornYMetres());
            }
        }
        double margin = MARGIN / MILLIMETRES;
        return across(left - margin) + " " + down(high + margin) + " " + across(right - left + 2 * margin) + " "
                + across(high - low + 2 * margin);
    }
}
