package fettle.workshop.worksheet;

import fettle.engine.control.linkage.FourBar;
import fettle.engine.control.linkage.SurfaceDrive;
import fettle.engine.control.servo.PulseScale;
import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.List;

/** The fields of a servo with its pushrod and surface. */
final class LinkageFields {
    private static final List<WorksheetField> ALL = List.of(
            WorksheetField.line("arm", "Servo arm", "Shaft to hole, in mm.", ""),
            WorksheetField.line("horn", "Control horn", "Hinge line to hole, in mm.", ""),
            WorksheetField.line("aft", "Hinge aft of the shaft", "In mm.", ""),
            WorksheetField.line("above", "Hinge above the shaft", "In mm; negative if below.", "0 mm"),
            WorksheetField.line("arm-direction", "Direction of the arm", "At neutral; 0° points aft, 90° up.", "90°"),
            WorksheetField.line(
                    "horn-direction", "Direction of the horn", "Hinge to hole at neutral; 0° aft, 90° up.", "90°"),
            WorksheetField.line("chord", "Surface chord", "Hinge line to trailing edge, in mm.", "50 mm"),
            WorksheetField.line("centre", "Centre pulse", "In µs.", "1500 µs"),
            WorksheetField.line("turn", "Servo turn", "Angle for 100 µs; negative if the servo is reversed.", "10°"));

    private static final double PULSE_OF_TURN = TradeUnit.MICROSECOND.toSi(100);

    private LinkageFields() {}

    static List<WorksheetField> with(WorksheetField... more) {
        List<WorksheetField> fields = new ArrayList<>(ALL);
        fields.addAll(List.of(more));
        return fields;
    }

    /** The linkage; each part's own fault is kept at its field. */
    static SurfaceDrive drive(Typed typed) {
        double arm = length(typed, "arm");
        double horn = length(typed, "horn");
        double aft = length(typed, "aft");
        double above = length(typed, "above");
        double armDirection = angle(typed, "arm-direction");
        double hornDirection = angle(typed, "horn-direction");
        double chord = length(typed, "chord");
        double centre = pulse(typed, "centre");
        double turn = angle(typed, "turn");
        return typed.make(() -> new SurfaceDrive(
                new FourBar(arm, horn, aft, above, armDirection, hornDirection),
                new PulseScale(centre, turn / PULSE_OF_TURN),
                chord));
    }

    static double length(Typed typed, String key) {
        return typed.quantity(key, Measure.LENGTH, TradeUnit.MILLIMETRE, 0.01);
    }

    static double angle(Typed typed, String key) {
        return typed.quantity(key, Measure.ANGLE, TradeUnit.DEGREE, 1);
    }

    static double pulse(Typed typed, String key) {
        return typed.quantity(key, Measure.PULSE, TradeUnit.MICROSECOND, TradeUnit.MICROSECOND.toSi(1500));
    }
}
