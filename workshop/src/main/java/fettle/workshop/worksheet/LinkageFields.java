package fettle.workshop.worksheet;

import fettle.engine.control.linkage.FourBar;
import fettle.engine.control.linkage.SurfaceDrive;
import fettle.engine.control.servo.PulseScale;
import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

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

    /** What the keys of the second surface end with. */
    private static final String SECOND = "-2";

    private static final double PULSE_OF_TURN = TradeUnit.MICROSECOND.toSi(100);

    private LinkageFields() {}

    static List<WorksheetField> with(WorksheetField... more) {
        List<WorksheetField> fields = new ArrayList<>(ALL);
        fields.addAll(List.of(more));
        return List.copyOf(fields);
    }

    /** The same fields for a second surface; what is left out is as of the first. */
    static List<WorksheetField> second() {
        return ALL.stream()
                .map(field -> WorksheetField.line(
                        field.key() + SECOND,
                        field.label() + ", second",
                        field.hint() + " Left out: as the first.",
                        ""))
                .toList();
    }

    /** The linkage; each part's own fault is kept at its field. */
    static SurfaceDrive drive(Typed typed) {
        return drive(typed, UnaryOperator.identity());
    }

    /** The second linkage. */
    static SurfaceDrive secondDrive(Typed typed) {
        return drive(typed, key -> typed.word(key + SECOND).isEmpty() ? key : key + SECOND);
    }

    private static SurfaceDrive drive(Typed typed, UnaryOperator<String> key) {
        double arm = length(typed, key.apply("arm"));
        double horn = length(typed, key.apply("horn"));
        double aft = length(typed, key.apply("aft"));
        double above = length(typed, key.apply("above"));
        double armDirection = angle(typed, key.apply("arm-direction"));
        double hornDirection = angle(typed, key.apply("horn-direction"));
        double chord = length(typed, key.apply("chord"));
        double centre = pulse(typed, key.apply("centre"));
        double turn = angle(typed, key.apply("turn"));
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
