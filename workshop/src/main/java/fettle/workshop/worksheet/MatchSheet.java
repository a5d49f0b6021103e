package fettle.workshop.worksheet;

import fettle.engine.control.linkage.MeasuredTravel;
import fettle.engine.control.linkage.SurfaceMotion;
import fettle.engine.control.matching.CurvePoint;
import fettle.engine.control.matching.Mismatch;
import fettle.engine.control.matching.SurfaceMatch;
import fettle.engine.control.matching.SurfaceMatching;
import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.engine.units.TradeUnit;
import fettle.workshop.TypedLines;
import fettle.workshop.worksheet.Sheet.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What brings two unlike surfaces to the same angles. */
final class MatchSheet {
    static final Worksheet WORKSHEET = new Worksheet(
            "match",
            "Match two surfaces",
            "Which end points and curve points bring the second surface to the first one's angles?",
            Stream.of(
                            LinkageFields.with().stream(),
                            LinkageFields.second().stream(),
                            Stream.of(
                                    WorksheetField.lines(
                                            "readings",
                                            "Measured angles",
                                            "Of the first, instead of its linkage: pulse and angle, one pair a line."
                                                    + " E.g. 1100 -22.5"),
                                    WorksheetField.lines(
                                            "readings-2", "Measured angles, second", "The same for the second."),
                                    WorksheetField.line("up", "Throw up", "Of both, in degrees.", ""),
                                    WorksheetField.line("down", "Throw down", "Of both, in degrees.", ""),
                                    WorksheetField.line(
                                            "points", "Curve points", "Of the transmitter: 3, 5, 7 … 17.", "5")))
                    .flatMap(stream -> stream)
                    .toList(),
            MatchSheet::answer);

    private MatchSheet() {}

    private static Sheet answer(Typed typed) {
        double up = LinkageFields.angle(typed, "up");
        double down = LinkageFields.angle(typed, "down");
        int points = typed.read("points", () -> points(typed.word("points")), 5);
        SurfaceMotion first = typed.word("readings").isEmpty()
                ? LinkageFields.drive(typed)
                : measured(typed, "readings", LinkageFields.length(typed, "chord"));
        SurfaceMotion second = typed.word("readings-2").isEmpty()
                ? LinkageFields.secondDrive(typed)
                : measured(typed, "readings-2", LinkageFields.length(typed, LinkageFields.secondKey(typed, "chord")));
        return typed.make(() -> sheet(SurfaceMatching.match(first, second, up, down, points)));
    }

    private static SurfaceMotion measured(Typed typed, String key, double chord) {
        List<MeasuredTravel.Reading> readings =
                typed.read(key, () -> TypedLines.read(key, typed.word(key), line -> reading(key, line)), List.of());
        return typed.make(() -> new MeasuredTravel(readings, chord), "table", key);
    }

    private static MeasuredTravel.Reading reading(String key, String line) {
        String[] pair = line.strip().split("[;\\t]\\s*|\\s+(?=[-+−\\d])");
        if (pair.length != 2) {
            throw new InputException(
                    key, "\"" + line.strip() + "\" is no pair; expected a pulse and an angle, e.g. 1100 -22.5.");
        }
        return new MeasuredTravel.Reading(
                QuantityText.si(key, "pulse", pair[0], Measure.PULSE, TradeUnit.MICROSECOND),
                QuantityText.si(key, "angle", pair[1].replace('−', '-'), Measure.ANGLE, TradeUnit.DEGREE));
    }

    private static int points(String typed) {
        if (!typed.strip().matches("\\d{1,2}")) {
            throw new InputException("points", "curve points are \"" + typed.strip() + "\"; expected an odd number.");
        }
        return Integer.parseInt(typed.strip());
    }

    private static Sheet sheet(SurfaceMatch match) {
        Mismatch ends = SurfaceMatch.worst(match.byEnds());
        Mismatch curve = SurfaceMatch.worst(match.byCurve());
        List<Figure> figures = new ArrayList<>();
        for (CurvePoint point : match.curve()) {
            long stick = Math.round(100 * point.stick());
            figures.add(Figure.exact(
                    "second_at_" + stick,
                    "Second at stick " + stick + " % (" + TradeUnit.DEGREE.print(point.surfaceRadians(), 1) + ")",
                    point.secondSeconds(),
                    TradeUnit.MICROSECOND,
                    1));
            figures.add(
                    Figure.exact("first_at_" + stick, "First there", point.firstSeconds(), TradeUnit.MICROSECOND, 1));
        }
        figures.add(Figure.exact(
                "mismatch_ends", "Left with ends and centre", Math.abs(ends.radians()), TradeUnit.DEGREE, 2));
        figures.add(
                Figure.exact("mismatch_curve", "Left with the curve", Math.abs(curve.radians()), TradeUnit.DEGREE, 2));
        figures.add(Figure.exact(
                "mismatch_edge", "That at the trailing edge", Math.abs(curve.edgeMetres()), TradeUnit.MILLIMETRE, 2));
        return new Sheet(
                match.curve().size() + " points leave at most " + TradeUnit.DEGREE.print(Math.abs(curve.radians()), 2)
                        + " between them; end points and centre alone "
                        + TradeUnit.DEGREE.print(Math.abs(ends.radians()), 2) + ".",
                figures,
                List.of("Stick −100 % is down, +100 % up; straight lines between the points."),
                ControlNotes.cautions(match.cautions()),
                match.working());
    }
}
