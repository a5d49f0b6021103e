package fettle.workshop.worksheet;

import fettle.engine.control.load.AirLoad;
import fettle.engine.control.load.EnteredLoad;
import fettle.engine.control.load.LoadedServo;
import fettle.engine.control.load.StandardAir;
import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The fields of what loads a surface: air by its speed, or a moment as measured, as for a car's steering. */
final class LoadFields {
    static final List<WorksheetField> ALL = List.of(
            WorksheetField.line("speed", "Airspeed", "Fastest dive; left out: no air load.", ""),
            WorksheetField.line("span", "Surface length", "Along the hinge, in mm.", "300 mm"),
            WorksheetField.line("share", "Share of the chord", "Surface chord over the whole, in %.", "25 %"),
            WorksheetField.line("attack", "Angle of attack", "Same way as the deflection.", "5°"),
            WorksheetField.line("altitude", "Altitude", "Above sea level, in m or ft.", "0 m"),
            WorksheetField.line(
                    "moment",
                    "Moment as measured",
                    "Instead of airspeed: steering, a rudder in water. E.g. 3 kgcm",
                    ""),
            WorksheetField.line("unsure", "That moment unsure by", "One standard deviation, in %.", "20 %"),
            WorksheetField.line("efficiency", "Efficiency of the linkage", "In %.", "85 %"));

    private LoadFields() {}

    /** The load; empty where neither airspeed nor moment was typed. */
    static Optional<LoadedServo> load(Typed typed, double chordMetres) {
        OptionalDouble speed = typed.optional("speed", Measure.SPEED, TradeUnit.METRE_PER_SECOND);
        double span = LinkageFields.length(typed, "span");
        double share = typed.quantity("share", Measure.FRACTION, TradeUnit.PERCENT, 0.25);
        double attack = LinkageFields.angle(typed, "attack");
        double altitude = typed.quantity("altitude", Measure.LENGTH, TradeUnit.METRE, 0);
        OptionalDouble moment = typed.optional("moment", Measure.TORQUE, TradeUnit.KILOGRAM_FORCE_CENTIMETRE);
        double unsure = typed.quantity("unsure", Measure.FRACTION, TradeUnit.PERCENT, 0.2);
        double efficiency = typed.quantity("efficiency", Measure.FRACTION, TradeUnit.PERCENT, 1);
        if (speed.isPresent() && moment.isPresent()) {
            return typed.make(() -> {
                throw new InputException("moment", "both an airspeed and a moment are given. Give one of them.");
            });
        }
        if (moment.isPresent()) {
            double measured = moment.getAsDouble();
            return typed.make(() -> Optional.of(new LoadedServo(
                    new EnteredLoad(Estimate.ofIndependent(
                            measured, List.of(new Driver("measured moment", measured * unsure)))),
                    efficiency)));
        }
        if (speed.isEmpty()) {
            return Optional.empty();
        }
        Estimate fast = new Estimate(speed.getAsDouble(), 0, List.of());
        return typed.make(() -> Optional.of(new LoadedServo(
                new AirLoad(chordMetres, span, share, fast, StandardAir.density(altitude, null), attack), efficiency)));
    }
}
