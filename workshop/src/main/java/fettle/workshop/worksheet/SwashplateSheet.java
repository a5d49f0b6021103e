package fettle.workshop.worksheet;

import fettle.engine.control.servo.PulseScale;
import fettle.engine.control.swashplate.LevellingSheet;
import fettle.engine.control.swashplate.PlateAttitude;
import fettle.engine.control.swashplate.PlateServo;
import fettle.engine.control.swashplate.Swashplate;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import fettle.workshop.worksheet.Sheet.Figure;
import java.util.ArrayList;
import java.util.List;

/** Pulses of a three-servo swashplate. */
final class SwashplateSheet {
    private static final double PULSE_OF_TURN = TradeUnit.MICROSECOND.toSi(100);

    static final Worksheet WORKSHEET = new Worksheet(
            "swashplate",
            "A helicopter's swashplate",
            "Which pulses put the plate there, what does a plain mix miss, and how is it levelled?",
            List.of(
                    WorksheetField.choice(
                            "layout", "Layout", "Degrees from the tail servo.", "120", List.of("120", "135", "140")),
                    WorksheetField.line("ball", "Balls from the mast", "In mm.", ""),
                    WorksheetField.line("arm", "Servo arms", "Shaft to hole, in mm.", ""),
                    WorksheetField.line("centre", "Centre pulse", "Arms level there.", "1520 µs"),
                    WorksheetField.line("turn", "Servo turn", "Angle for 100 µs.", "10°"),
                    WorksheetField.line("height", "Height of the plate", "Collective, from its middle, in mm.", "0 mm"),
                    WorksheetField.line("forward", "Tilt forward", "Nose side down.", "0°"),
                    WorksheetField.line("right", "Tilt to the right", "Right side down.", "0°"),
                    WorksheetField.line("range", "Collective range", "Either way, for levelling, in mm.", "5 mm")),
            SwashplateSheet::answer);

    private SwashplateSheet() {}

    private static Sheet answer(Typed typed) {
        double layout = LinkageFields.angle(typed, "layout");
        double ball = LinkageFields.length(typed, "ball");
        double arm = LinkageFields.length(typed, "arm");
        double centre = LinkageFields.pulse(typed, "centre");
        double turn = LinkageFields.angle(typed, "turn");
        PlateAttitude wanted = new PlateAttitude(
                LinkageFields.length(typed, "height"),
                LinkageFields.angle(typed, "forward"),
                LinkageFields.angle(typed, "right"));
        double range = LinkageFields.length(typed, "range");
        return typed.make(() -> sheet(
                Swashplate.withTailServo(layout, ball, arm, new PulseScale(centre, turn / PULSE_OF_TURN)),
                wanted,
                range));
    }

    private static Sheet sheet(Swashplate plate, PlateAttitude wanted, double range) {
        List<Double> pulses = plate.pulses(wanted);
        PlateAttitude mixed = plate.mixed(wanted);
        LevellingSheet levelling = plate.levelling(List.of(-range, 0.0, range));
        List<Figure> figures = new ArrayList<>();
        List<String> words = new ArrayList<>();
        for (int at = 0; at < pulses.size(); at++) {
            PlateServo servo = plate.servos().get(at);
            figures.add(Figure.exact(
                    servo.name() + "_pulse", "Servo " + servo.name(), pulses.get(at), TradeUnit.MICROSECOND, 1));
            words.add(servo.name() + " " + TradeUnit.MICROSECOND.print(pulses.get(at), 0));
        }
        figures.add(Figure.exact(
                "height_missed",
                "Height a plain mix misses",
                mixed.heightMetres() - wanted.heightMetres(),
                TradeUnit.MILLIMETRE,
                2));
        figures.add(Figure.exact(
                "forward_missed",
                "Forward tilt it misses",
                mixed.forwardRadians() - wanted.forwardRadians(),
                TradeUnit.DEGREE,
                2));
        figures.add(Figure.exact(
                "right_missed",
                "Right tilt it misses",
                mixed.rightRadians() - wanted.rightRadians(),
                TradeUnit.DEGREE,
                2));
        return new Sheet(
                "Pulses: " + String.join(", ", words) + ".",
                figures,
                levelling.rows().stream()
                        .map(row -> level(levelling.servos(), row))
                        .toList(),
                ControlNotes.cautions(levelling.cautions()),
                Working.of(new Step(
                        "pulses of the plate",
                        "h − r·(cos ψ·tan forward + sin ψ·tan right) = arm · sin θ; pulse = centre + θ / slope",
                        List.of("ψ from the nose: tail 180°, the others 180° − layout either side"),
                        String.join(", ", words),
                        Citation.published("plane geometry; links stand upright, their lean is left out"))));
    }

    private static String level(List<String> servos, LevellingSheet.Row row) {
        List<String> words = new ArrayList<>();
        for (int at = 0; at < servos.size(); at++) {
            words.add(servos.get(at) + " "
                    + TradeUnit.MICROSECOND.print(row.pulseSeconds().get(at), 0));
        }
        return "Level at " + TradeUnit.MILLIMETRE.print(row.heightMetres(), 1) + ": " + String.join(", ", words) + ".";
    }
}
