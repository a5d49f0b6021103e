package fettle.workshop.worksheet;

import fettle.engine.control.linkage.FourBar;
import fettle.engine.control.linkage.Linkage;
import fettle.engine.control.linkage.PullPull;
import fettle.engine.control.linkage.SurfaceDrive;
import fettle.engine.control.linkage.TorqueRod;
import fettle.engine.control.servo.PulseScale;
import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;

/** The fields of a servo with its linkage and surface. */
final class LinkageFields {
    static final String PUSHROD = "pushrod";
    static final String CABLES = "cables";
    static final String TORQUE_ROD = "torque rod";

    private static final List<String> KINDS = List.of(PUSHROD, CABLES, TORQUE_ROD);
    private static final List<WorksheetField> ALL = List.of(
            WorksheetField.choice("joined", "Joined by", "Cables pull from both ends of arm and horn.", PUSHROD, KINDS),
            WorksheetField.line("arm", "Servo arm", "Shaft to hole, in mm; not for a torque rod.", ""),
            WorksheetField.line("horn", "Control horn", "Hinge line to hole, in mm; not for a torque rod.", ""),
            WorksheetField.line("aft", "Hinge aft of the shaft", "In mm; not for a torque rod.", ""),
            WorksheetField.line("above", "Hinge above the shaft", "In mm; negative if below.", "0 mm"),
            WorksheetField.line("arm-direction", "Direction of the arm", "At neutral; 0° points aft, 90° up.", "90°"),
            WorksheetField.line(
                    "horn-direction", "Direction of the horn", "Hinge to hole at neutral; 0° aft, 90° up.", "90°"),
            WorksheetField.line("rod-length", "Free length of a torque rod", "Servo to surface, in mm.", "100 mm"),
            WorksheetField.line("rod-thickness", "Thickness of a torque rod", "Round steel, in mm.", "3 mm"),
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
                        second(field.key()),
                        field.label() + ", second",
                        choices(field) + field.hint() + " Left out: as the first.",
                        ""))
                .toList();
    }

    static String second(String key) {
        return key + SECOND;
    }

    private static String choices(WorksheetField field) {
        return field.choices().isEmpty() ? "" : String.join(", ", field.choices()) + ". ";
    }

    /** The linkage; each part's own fault is kept at its field. */
    static SurfaceDrive drive(Typed typed) {
        return drive(typed, UnaryOperator.identity());
    }

    /** The second linkage. */
    static SurfaceDrive secondDrive(Typed typed) {
        return drive(typed, key -> secondKey(typed, key));
    }

    /** Where a figure of the second surface is typed. */
    static String secondKey(Typed typed, String key) {
        return typed.word(second(key)).isEmpty() ? key : second(key);
    }

    private static SurfaceDrive drive(Typed typed, UnaryOperator<String> key) {
        String kind = typed.read(
                key.apply("joined"), () -> kind(key.apply("joined"), typed.word(key.apply("joined"))), PUSHROD);
        PartMaker linkage = kind.equals(TORQUE_ROD) ? torqueRod(typed, key) : rods(typed, key, kind);
        double chord = length(typed, key.apply("chord"));
        double centre = pulse(typed, key.apply("centre"));
        double turn = angle(typed, key.apply("turn"));
        return typed.make(() -> new SurfaceDrive(linkage.make(), new PulseScale(centre, turn / PULSE_OF_TURN), chord));
    }

    /** Makes the linkage once every field has been read. */
    private interface PartMaker {
        Linkage make();
    }

    private static PartMaker torqueRod(Typed typed, UnaryOperator<String> key) {
        double length = length(typed, key.apply("rod-length"));
        double thickness = length(typed, key.apply("rod-thickness"));
        return () -> new TorqueRod(TorqueRod.Turning.WITH_SERVO, length, thickness, TorqueRod.STEEL_SHEAR_PASCALS);
    }

    private static PartMaker rods(Typed typed, UnaryOperator<String> key, String kind) {
        double arm = length(typed, key.apply("arm"));
        double horn = length(typed, key.apply("horn"));
        double aft = length(typed, key.apply("aft"));
        double above = length(typed, key.apply("above"));
        double armDirection = angle(typed, key.apply("arm-direction"));
        double hornDirection = angle(typed, key.apply("horn-direction"));
        return () -> {
            FourBar first = new FourBar(arm, horn, aft, above, armDirection, hornDirection);
            return kind.equals(CABLES) ? PullPull.straight(first) : first;
        };
    }

    private static String kind(String key, String typed) {
        String word = typed.strip().toLowerCase(Locale.ROOT);
        if (!KINDS.contains(word)) {
            throw new InputException(
                    key, "joined by \"" + typed.strip() + "\"; expected one of " + String.join(", ", KINDS) + ".");
        }
        return word;
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
