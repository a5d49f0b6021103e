package fettle.workshop.worksheet;

import fettle.engine.control.linkage.PullPull;
import fettle.engine.control.linkage.SurfaceDrive;
import fettle.engine.control.linkage.TorqueRod;
import fettle.engine.control.linkage.TravelCurve;
import fettle.engine.control.linkage.TravelPoint;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import fettle.workshop.worksheet.Sheet.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What a linkage does with a span of pulses. */
final class LinkageSheet {
    private static final int INTERVALS = 8;

    static final Worksheet WORKSHEET = new Worksheet(
            "linkage",
            "A linkage",
            "How far does the surface go, how evenly, with what force, and how near is a dead centre?",
            LinkageFields.with(
                    WorksheetField.line("low", "Lowest pulse", "In µs.", "1100 µs"),
                    WorksheetField.line("high", "Highest pulse", "In µs.", "1900 µs"),
                    WorksheetField.line("play", "Play of the joints", "All along the rod, in mm.", "0 mm")),
            LinkageSheet::answer);

    private LinkageSheet() {}

    private static Sheet answer(Typed typed) {
        double low = LinkageFields.pulse(typed, "low");
        double high = LinkageFields.pulse(typed, "high");
        double play = LinkageFields.length(typed, "play");
        SurfaceDrive drive = LinkageFields.drive(typed);
        return typed.make(() -> sheet(
                drive.curve(low, high, INTERVALS),
                drive.freePlayMetres(drive.scale().centreSeconds(), play, 0),
                own(drive, low, high)));
    }

    /** What only one kind of linkage has. */
    private static List<Figure> own(SurfaceDrive drive, double low, double high) {
        if (drive.linkage() instanceof PullPull cables) {
            double first = cables.slackMetres(drive.scale().servoRadians(low));
            double last = cables.slackMetres(drive.scale().servoRadians(high));
            return List.of(
                    Figure.exact("slack_low", "Cable slack, lowest pulse", first, TradeUnit.MILLIMETRE, 2),
                    Figure.exact("slack_high", "Cable slack, highest pulse", last, TradeUnit.MILLIMETRE, 2));
        }
        if (drive.linkage() instanceof TorqueRod rod) {
            double twist = rod.twistRadians(TradeUnit.KILOGRAM_FORCE_CENTIMETRE.toSi(1));
            return List.of(Figure.exact("twist", "Twist for each kg·cm", twist, TradeUnit.DEGREE, 2));
        }
        return List.of();
    }

    private static Sheet sheet(TravelCurve curve, double playMetres, List<Figure> own) {
        TravelPoint low = curve.points().get(0);
        TravelPoint high = curve.points().get(INTERVALS);
        List<Figure> figures = new ArrayList<>();
        for (TravelPoint point : curve.points()) {
            long micros = Math.round(TradeUnit.MICROSECOND.fromSi(point.pulseSeconds()));
            figures.add(Figure.exact(
                    "surface_at_" + micros,
                    "Surface at " + micros + " µs",
                    point.position().surfaceRadians(),
                    TradeUnit.DEGREE,
                    2));
        }
        figures.add(Figure.exact("edge_low", "Trailing edge, lowest pulse", low.edgeMetres(), TradeUnit.MILLIMETRE, 1));
        figures.add(
                Figure.exact("edge_high", "Trailing edge, highest pulse", high.edgeMetres(), TradeUnit.MILLIMETRE, 1));
        figures.add(
                plain("ratio_low", "Surface per servo, lowest", low.position().ratio()));
        figures.add(plain(
                "ratio_high", "Surface per servo, highest", high.position().ratio()));
        figures.add(Figure.exact(
                "resolution",
                "Surface per µs, lowest pulse",
                Math.abs(low.radiansPerPulseSecond()) * 1e-6,
                TradeUnit.DEGREE,
                4));
        if (Double.isFinite(curve.differential())) {
            figures.add(plain("differential", "Larger over smaller throw", curve.differential()));
        }
        if (Double.isFinite(curve.marginRadians())) {
            figures.add(
                    Figure.exact("margin", "Servo angle to a dead centre", curve.marginRadians(), TradeUnit.DEGREE, 1));
        }
        figures.add(Figure.exact("free_play", "Free play at the edge", playMetres, TradeUnit.MILLIMETRE, 2));
        figures.addAll(own);
        return new Sheet(
                "The surface goes from "
                        + TradeUnit.DEGREE.print(low.position().surfaceRadians(), 1) + " to "
                        + TradeUnit.DEGREE.print(high.position().surfaceRadians(), 1) + "; up is positive.",
                figures,
                ControlNotes.of(curve.remarks()),
                ControlNotes.cautions(curve.cautions()),
                curve.working());
    }

    /** A figure without a unit. */
    static Figure plain(String key, String label, double value) {
        return new Figure(key, label, new Estimate(value, 0, List.of()), String.format(Locale.ROOT, "%.3f", value), "");
    }
}
