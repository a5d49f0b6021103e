package fettle.workshop.worksheet;

import fettle.engine.control.linkage.choice.Fittings;
import fettle.engine.control.linkage.choice.LinkageChoice;
import fettle.engine.control.linkage.choice.LinkageChoices;
import fettle.engine.control.linkage.choice.LinkageSearch;
import fettle.engine.control.linkage.choice.WantedThrows;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.engine.units.TradeUnit;
import fettle.workshop.worksheet.Sheet.Figure;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Which holes and clocking give wanted throws with the least torque. */
final class HolesSheet {
    private static final int SHOWN = 5;
    private static final Pattern BETWEEN = Pattern.compile("[\\s;]+(?!mm|in|deg|°)");

    static final Worksheet WORKSHEET = new Worksheet(
            "holes",
            "Holes for wanted throws",
            "Which holes and which clocking give these throws with the most servo travel and the least torque?",
            List.of(
                    WorksheetField.line("arms", "Holes of the arm", "Radii in mm, with spaces: 8 10 12 14.", ""),
                    WorksheetField.line("horns", "Holes of the horn", "From the hinge line, in mm: 10 13 16.", ""),
                    WorksheetField.line("aft", "Hinge aft of the shaft", "In mm.", ""),
                    WorksheetField.line("above", "Hinge above the shaft", "In mm; negative if below.", "0 mm"),
                    WorksheetField.line(
                            "directions", "Directions of the arm", "Clockings to try; 90° is up.", "75 90 105"),
                    WorksheetField.line("horn-direction", "Direction of the horn", "At neutral; 90° is up.", "90°"),
                    WorksheetField.line("travel", "Servo travel", "Either way.", "45°"),
                    WorksheetField.line("up", "Throw up", "In degrees.", ""),
                    WorksheetField.line("down", "Throw down", "In degrees.", "")),
            HolesSheet::answer);

    private HolesSheet() {}

    private static Sheet answer(Typed typed) {
        List<Double> arms = several(typed, "arms", "hole", Measure.LENGTH, TradeUnit.MILLIMETRE);
        List<Double> horns = several(typed, "horns", "hole", Measure.LENGTH, TradeUnit.MILLIMETRE);
        List<Double> directions = several(typed, "directions", "direction", Measure.ANGLE, TradeUnit.DEGREE);
        double aft = LinkageFields.length(typed, "aft");
        double above = LinkageFields.length(typed, "above");
        double horn = LinkageFields.angle(typed, "horn-direction");
        double travel = LinkageFields.angle(typed, "travel");
        double up = LinkageFields.angle(typed, "up");
        double down = LinkageFields.angle(typed, "down");
        return typed.make(() -> sheet(LinkageSearch.search(
                new Fittings(arms, horns, directions, horn, aft, above, travel), new WantedThrows(up, down))));
    }

    private static List<Double> several(Typed typed, String key, String what, Measure measure, TradeUnit bare) {
        return typed.read(
                key,
                () -> Arrays.stream(BETWEEN.split(typed.word(key).strip()))
                        .filter(word -> !word.isBlank())
                        .map(word -> QuantityText.si(key, what, word, measure, bare))
                        .toList(),
                List.<Double>of());
    }

    private static Sheet sheet(LinkageChoices choices) {
        LinkageChoice best = choices.bestFirst().get(0);
        return new Sheet(
                "Arm " + words(best) + "; best of " + choices.bestFirst().size() + " that serve, " + choices.tried()
                        + " tried.",
                List.of(
                        Figure.exact("arm", "Hole of the arm", best.linkage().armMetres(), TradeUnit.MILLIMETRE, 1),
                        Figure.exact("horn", "Hole of the horn", best.linkage().hornMetres(), TradeUnit.MILLIMETRE, 1),
                        Figure.exact(
                                "direction",
                                "Direction of the arm",
                                best.linkage().armNeutralRadians(),
                                TradeUnit.DEGREE,
                                1),
                        Figure.exact("travel", "Servo travel used", best.travelFraction(), TradeUnit.PERCENT, 0),
                        LinkageSheet.plain("torque", "Peak torque over hinge moment", best.peakTorqueRatio())),
                choices.bestFirst().stream()
                        .skip(1)
                        .limit(SHOWN)
                        .map(choice -> "Next: arm " + words(choice) + ".")
                        .toList(),
                ControlNotes.cautions(choices.cautions()),
                choices.working());
    }

    private static String words(LinkageChoice choice) {
        return TradeUnit.MILLIMETRE.print(choice.linkage().armMetres(), 1) + " at "
                + TradeUnit.DEGREE.print(choice.linkage().armNeutralRadians(), 0) + ", horn "
                + TradeUnit.MILLIMETRE.print(choice.linkage().hornMetres(), 1)
                + String.format(
                        Locale.ROOT,
                        ": %.0f %% of the servo's travel, peak torque %.2f of the hinge moment",
                        100 * choice.travelFraction(),
                        choice.peakTorqueRatio());
    }
}
