package fettle.workshop.worksheet;

import fettle.engine.control.linkage.EndPoints;
import fettle.engine.control.linkage.SurfaceDrive;
import fettle.engine.control.linkage.TrailingEdge;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.engine.units.TradeUnit;
import fettle.workshop.worksheet.Sheet.Figure;
import java.util.ArrayList;
import java.util.List;

/** Which end points give wanted throws. */
final class ThrowsSheet {
    static final Worksheet WORKSHEET = new Worksheet(
            "throws",
            "End points for wanted throws",
            "Which pulses give these throws, and how much servo angle is left?",
            LinkageFields.with(
                    WorksheetField.line("up", "Throw up", "Degrees, or mm at the trailing edge.", ""),
                    WorksheetField.line("down", "Throw down", "Degrees, or mm at the trailing edge.", "")),
            ThrowsSheet::answer);

    private ThrowsSheet() {}

    private static Sheet answer(Typed typed) {
        double chord = LinkageFields.length(typed, "chord");
        double up = wanted(typed, "up", chord);
        double down = wanted(typed, "down", chord);
        SurfaceDrive drive = LinkageFields.drive(typed);
        return typed.make(() -> sheet(drive.endPoints(up, down)));
    }

    private static double wanted(Typed typed, String key, double chord) {
        if (!QuantityText.measures(typed.word(key), Measure.LENGTH)) {
            return LinkageFields.angle(typed, key);
        }
        double edge = LinkageFields.length(typed, key);
        return typed.read(key, () -> TrailingEdge.surfaceRadians(chord, edge), 0.1);
    }

    private static Sheet sheet(EndPoints ends) {
        List<Figure> figures = new ArrayList<>(List.of(
                Figure.exact("up_pulse", "Pulse for up", ends.up().pulseSeconds(), TradeUnit.MICROSECOND, 1),
                Figure.exact("centre_pulse", "Centre", ends.centreSeconds(), TradeUnit.MICROSECOND, 1),
                Figure.exact("down_pulse", "Pulse for down", ends.down().pulseSeconds(), TradeUnit.MICROSECOND, 1),
                Figure.exact("up_edge", "Trailing edge up", ends.up().edgeMetres(), TradeUnit.MILLIMETRE, 1),
                Figure.exact("down_edge", "Trailing edge down", ends.down().edgeMetres(), TradeUnit.MILLIMETRE, 1)));
        if (Double.isFinite(ends.marginRadians())) {
            figures.add(
                    Figure.exact("margin", "Servo angle to a dead centre", ends.marginRadians(), TradeUnit.DEGREE, 1));
        }
        return new Sheet(
                "Set " + TradeUnit.MICROSECOND.print(ends.up().pulseSeconds(), 0) + " for up and "
                        + TradeUnit.MICROSECOND.print(ends.down().pulseSeconds(), 0) + " for down.",
                figures,
                ControlNotes.of(ends.remarks()),
                ControlNotes.cautions(ends.cautions()),
                ends.working());
    }
}
