package fettle.desk.setup;

import fettle.desk.json.Shapes;
import fettle.engine.control.Caution;
import fettle.engine.control.linkage.TravelPoint;
import fettle.engine.control.sweep.SweepPoint;
import fettle.engine.control.sweep.SweepResult;
import fettle.engine.units.TradeUnit;
import fettle.workshop.worksheet.LinkageStudy;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Makes the drawing and the curves of a linkage. */
final class LinkagePicture {
    /** Most corners of a drawn line; more than the frame has points across. */
    private static final int CORNERS = 400;

    /** Margins are drawn up to this: near neutral there is hardly a load, and the curve would hide the rest. */
    private static final double MOST_MARGIN = 10;

    private final LinkageStudy study;
    private final double lowMicros;
    private final double highMicros;

    LinkagePicture(LinkageStudy study) {
        this.study = study;
        List<TravelPoint> points = study.travel().points();
        this.lowMicros = micros(points.get(0).pulseSeconds());
        this.highMicros = micros(points.get(points.size() - 1).pulseSeconds());
    }

    LinkagePage.Picture at(double wantedMicros, @Nullable List<SweepPoint> sweep, @Nullable SweepResult swept) {
        List<TravelPoint> points = study.travel().points();
        TravelPoint shown = points.stream()
                .min(Comparator.comparingDouble(point -> Math.abs(micros(point.pulseSeconds()) - wantedMicros)))
                .orElseThrow();
        return new LinkagePage.Picture(
                Math.round(lowMicros),
                Math.round(highMicros),
                Math.round(micros(shown.pulseSeconds())),
                Math.round(micros(study.drive().scale().centreSeconds())),
                LinkageDrawing.of(study, shown),
                reading(shown),
                panels(sweep),
                place(micros(shown.pulseSeconds())),
                swept == null ? null : Bracket.of(swept.span(), lowMicros, highMicros),
                Shapes.write(points.stream().map(this::row).toList()),
                study.travel().remarks(),
                Caution.moving().stream().map(Caution::sentence).toList());
    }

    private List<Panel> panels(@Nullable List<SweepPoint> sweep) {
        List<TravelPoint> points = study.travel().points();
        int every = Math.max(1, points.size() / CORNERS);
        List<Panel.Place> angle = new ArrayList<>();
        List<Panel.Place> torque = new ArrayList<>();
        List<Panel.Place> margin = new ArrayList<>();
        Double stall = study.stallNewtonMetres();
        for (int at = 0; at < points.size(); at += every) {
            TravelPoint point = points.get(at);
            double pulse = micros(point.pulseSeconds());
            angle.add(new Panel.Place(
                    pulse, TradeUnit.DEGREE.fromSi(point.position().surfaceRadians())));
            study.designNewtonMetres(point).ifPresent(design -> {
                torque.add(new Panel.Place(pulse, TradeUnit.KILOGRAM_FORCE_CENTIMETRE.fromSi(design)));
                if (stall != null) {
                    margin.add(new Panel.Place(pulse, Math.min(MOST_MARGIN, stall / design)));
                }
            });
        }
        List<Panel> panels = new ArrayList<>();
        panels.add(Panel.of("surface [°], up positive", angle, lowMicros, highMicros));
        if (!torque.isEmpty()) {
            panels.add(Panel.of("servo torque to design for [kg·cm]", torque, lowMicros, highMicros));
        }
        if (!margin.isEmpty()) {
            panels.add(Panel.of("stall torque over that, drawn up to 10", margin, lowMicros, highMicros));
        }
        if (sweep != null) {
            panels.add(Panel.of("current of the latest sweep [A]", current(sweep), lowMicros, highMicros));
        }
        return panels;
    }

    private List<Panel.Place> current(List<SweepPoint> sweep) {
        return sweep.stream()
                .sorted(Comparator.comparingDouble(SweepPoint::pulseSeconds))
                .map(point -> new Panel.Place(micros(point.pulseSeconds()), point.amps()))
                .filter(place -> place.micros() >= lowMicros && place.micros() <= highMicros)
                .toList();
    }

    private String place(double micros) {
        return Panel.plain(Panel.across(micros, lowMicros, highMicros));
    }

    private String reading(TravelPoint point) {
        StringBuilder reading = new StringBuilder(Math.round(micros(point.pulseSeconds())) + " µs: surface "
                + TradeUnit.DEGREE.print(point.position().surfaceRadians(), 1) + ", trailing edge "
                + TradeUnit.MILLIMETRE.print(point.edgeMetres(), 1)
                + String.format(
                        Locale.ROOT,
                        ", surface per servo %.3f",
                        Math.abs(point.position().ratio())));
        study.designNewtonMetres(point).ifPresent(design -> {
            reading.append(", torque ").append(TradeUnit.KILOGRAM_FORCE_CENTIMETRE.print(design, 2));
            Double stall = study.stallNewtonMetres();
            if (stall != null && design > 0) {
                reading.append(String.format(Locale.ROOT, ", margin %.1f", stall / design));
            }
        });
        return reading.toString();
    }

    /**
     * One row of the slider's table.
     *
     * @param p pulse [µs]
     * @param d holes of arm and horn of each rod [mm], as drawn
     * @param e trailing edge [mm], as drawn
     * @param x where it stands in the panels
     * @param r the figures in words
     */
    record Row(long p, List<LinkageDrawing.Rod> d, List<String> e, String x, String r) {}

    private Row row(TravelPoint point) {
        double chord = study.drive().chordMetres();
        double surface = point.position().surfaceRadians();
        return new Row(
                Math.round(micros(point.pulseSeconds())),
                LinkageDrawing.rods(study, point),
                List.of(
                        LinkageDrawing.across(LinkageDrawing.hingeX(study) + chord * Math.cos(surface)),
                        LinkageDrawing.down(LinkageDrawing.hingeY(study) + chord * Math.sin(surface))),
                place(micros(point.pulseSeconds())),
                reading(point));
    }

    private static double micros(double seconds) {
        return TradeUnit.MICROSECOND.fromSi(seconds);
    }
}
