package fettle.workshop.worksheet;

import fettle.engine.control.Caution;
import fettle.engine.control.Remark;
import fettle.engine.control.servo.PulseScale;
import fettle.engine.control.servo.Rating;
import fettle.engine.control.servo.Ratings;
import fettle.engine.control.servo.Servo;
import fettle.engine.control.servo.Signal;
import fettle.engine.control.servo.SignalSuitability;
import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import fettle.workshop.worksheet.Sheet.Figure;
import java.util.List;

/** Whether a signal suits a servo. */
final class SignalSheet {
    private static final double PULSE_OF_TURN = TradeUnit.MICROSECOND.toSi(100);
    private static final double SMALLEST_DEAD_BAND = 0;

    /** The servo's torque plays no part in whether a signal suits it. */
    private static final Ratings ANY = new Ratings(List.of(new Rating(6, 0.5, null, null, null, null)));

    static final Worksheet WORKSHEET = new Worksheet(
            "signal",
            "A signal and a servo",
            "Does this channel's signal suit this servo, or would it drive it to its stop?",
            List.of(
                    WorksheetField.line("servo-centre", "Centre of the servo", "1500, 1520 or 760 µs.", "1500 µs"),
                    WorksheetField.line("servo-span", "To its stop", "From its centre.", "500 µs"),
                    WorksheetField.line("servo-frame", "Fastest frame rate", "The servo takes.", "50 Hz"),
                    WorksheetField.line("turn", "Servo turn", "Angle for 100 µs.", "10°"),
                    WorksheetField.line("lowest", "Shortest pulse", "Of the channel.", "1000 µs"),
                    WorksheetField.line("centre", "Centre pulse", "Of the channel.", "1500 µs"),
                    WorksheetField.line("highest", "Longest pulse", "Of the channel.", "2000 µs"),
                    WorksheetField.line("frame", "Frame rate", "Of the channel.", "50 Hz")),
            SignalSheet::answer);

    private SignalSheet() {}

    private static Sheet answer(Typed typed) {
        double middle = LinkageFields.pulse(typed, "servo-centre");
        double span = LinkageFields.pulse(typed, "servo-span");
        double fastest = typed.quantity("servo-frame", Measure.FREQUENCY, TradeUnit.HERTZ, 50);
        double turn = LinkageFields.angle(typed, "turn");
        double lowest = LinkageFields.pulse(typed, "lowest");
        double centre = LinkageFields.pulse(typed, "centre");
        double highest = LinkageFields.pulse(typed, "highest");
        double frame = typed.quantity("frame", Measure.FREQUENCY, TradeUnit.HERTZ, 50);
        return typed.make(() -> sheet(
                new Signal(lowest, centre, highest, frame),
                new Servo(
                        "the servo",
                        new PulseScale(middle, turn / PULSE_OF_TURN),
                        span,
                        fastest,
                        SMALLEST_DEAD_BAND,
                        ANY)));
    }

    private static Sheet sheet(Signal signal, Servo servo) {
        List<Remark> remarks = SignalSuitability.of(signal, servo);
        return new Sheet(
                remarks.isEmpty()
                        ? "Nothing speaks against connecting them."
                        : ControlNotes.sentence(
                                remarks.get(0).statement(), remarks.get(0).advice()),
                List.of(
                        Figure.exact("low_time", "Left of the frame", signal.lowSeconds(), TradeUnit.MICROSECOND, 0),
                        Figure.exact(
                                "angle_at_centre",
                                "Arm at the signal's centre",
                                servo.scale().servoRadians(signal.centreSeconds()),
                                TradeUnit.DEGREE,
                                1)),
                ControlNotes.of(remarks.subList(Math.min(1, remarks.size()), remarks.size())),
                ControlNotes.cautions(Caution.moving()),
                Working.of(new Step(
                        "left of the frame",
                        "1 / frame rate − longest pulse; it must be above 0",
                        List.of("frame = " + TradeUnit.MICROSECOND.print(signal.frameSeconds(), 0)),
                        TradeUnit.MICROSECOND.print(signal.lowSeconds(), 0),
                        Citation.commonPractice("no standard fixes the servo signal"))));
    }
}
