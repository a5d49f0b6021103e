package fettle.workshop.worksheet;

import fettle.engine.control.linkage.FourBar;
import fettle.engine.control.linkage.SurfaceDrive;
import fettle.engine.control.linkage.TravelCurve;
import fettle.engine.control.linkage.TravelPoint;
import fettle.engine.control.load.AirLoad;
import fettle.engine.control.load.LoadedServo;
import fettle.engine.control.load.StandardAir;
import fettle.engine.units.Estimate;
import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * A linkage over its whole travel, microsecond by microsecond, for drawing it.
 *
 * @param linkage the linkage
 * @param drive servo, linkage and surface
 * @param travel from the lowest pulse to the highest
 * @param load air load through the linkage; {@code null} where no airspeed was typed
 * @param stallNewtonMetres stall torque at the voltage that is left [N·m]; {@code null} if not typed
 */
public record LinkageStudy(
        FourBar linkage,
        SurfaceDrive drive,
        TravelCurve travel,
        @Nullable LoadedServo load,
        @Nullable Double stallNewtonMetres) {
    private static final double ONE = TradeUnit.MICROSECOND.toSi(1);

    private static final List<WorksheetField> FIELDS = List.copyOf(LinkageFields.with(
            WorksheetField.line("low", "Lowest pulse", "In µs.", "1100 µs"),
            WorksheetField.line("high", "Highest pulse", "In µs.", "1900 µs"),
            WorksheetField.line("speed", "Airspeed", "Left out: no air load.", ""),
            WorksheetField.line("span", "Surface length", "Along the hinge, in mm.", "300 mm"),
            WorksheetField.line("share", "Share of the chord", "Surface chord over the whole, in %.", "25 %"),
            WorksheetField.line("attack", "Angle of attack", "Same way as the deflection.", "5°"),
            WorksheetField.line("torque", "Stall torque", "At the voltage that is left; may be left out.", "")));

    /** What it asks for. */
    public static List<WorksheetField> fields() {
        return List.copyOf(FIELDS);
    }

    /**
     * Reads what was typed, by key; what is missing stands for its usual value.
     *
     * @throws fettle.engine.units.InputException with every fault, each at its field
     */
    public static LinkageStudy of(Map<String, String> words) {
        Typed typed = new Typed(words, FIELDS);
        double low = LinkageFields.pulse(typed, "low");
        double high = LinkageFields.pulse(typed, "high");
        double chord = LinkageFields.length(typed, "chord");
        OptionalDouble speed = typed.optional("speed", Measure.SPEED, TradeUnit.METRE_PER_SECOND);
        double span = LinkageFields.length(typed, "span");
        double share = typed.quantity("share", Measure.FRACTION, TradeUnit.PERCENT, 0.25);
        double attack = LinkageFields.angle(typed, "attack");
        OptionalDouble stall = typed.optional("torque", Measure.TORQUE, TradeUnit.KILOGRAM_FORCE_CENTIMETRE);
        SurfaceDrive drive = LinkageFields.drive(typed);
        return typed.make(() -> new LinkageStudy(
                (FourBar) drive.linkage(),
                drive,
                drive.curve(low, high, (int) Math.max(1, Math.round((high - low) / ONE))),
                speed.isEmpty() ? null : loaded(chord, span, share, speed.getAsDouble(), attack),
                stall.isEmpty() ? null : Double.valueOf(stall.getAsDouble())));
    }

    /** Servo torque to design for at a point [N·m]; empty without a load. */
    public OptionalDouble designNewtonMetres(TravelPoint point) {
        return load == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(load.designNewtonMetres(
                        point.position().surfaceRadians(), point.position().ratio()));
    }

    private static LoadedServo loaded(double chord, double span, double share, double speed, double attack) {
        return new LoadedServo(
                new AirLoad(
                        chord, span, share, new Estimate(speed, 0, List.of()), StandardAir.density(0, null), attack),
                LoadedServo.USUAL_EFFICIENCY);
    }
}
