package fettle.workshop.worksheet;

import fettle.engine.control.Caution;
import fettle.engine.control.load.AirLoad;
import fettle.engine.control.load.LoadedServo;
import fettle.engine.control.load.StandardAir;
import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import fettle.workshop.worksheet.Sheet.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** What the air asks of a servo. */
final class HingeSheet {
    static final Worksheet WORKSHEET = new Worksheet(
            "hinge",
            "Air load on a surface",
            "What torque does the servo need at this speed, and what margin is left?",
            List.of(
                    WorksheetField.line("chord", "Surface chord", "Behind the hinge, in mm.", ""),
                    WorksheetField.line("span", "Surface length", "Along the hinge, in mm.", ""),
                    WorksheetField.line("share", "Share of the chord", "Surface chord over the whole, in %.", "25 %"),
                    WorksheetField.line("deflection", "Deflection", "Largest, in degrees.", "20°"),
                    WorksheetField.line("attack", "Angle of attack", "Same way as the deflection.", "5°"),
                    WorksheetField.line("speed", "Airspeed", "Fastest dive; m/s, km/h, mph or kn.", ""),
                    WorksheetField.line("unsure", "Speed unsure by", "One standard deviation.", "0 m/s"),
                    WorksheetField.line("altitude", "Altitude", "Above sea level, in m or ft.", "0 m"),
                    WorksheetField.line("air", "Air", "Temperature; left out: standard for the altitude.", ""),
                    WorksheetField.line("ratio", "Surface per servo", "Of the linkage there, in %.", "100 %"),
                    WorksheetField.line("efficiency", "Efficiency of the linkage", "In %.", "85 %"),
                    WorksheetField.line("torque", "Stall torque", "At the voltage that is left; may be left out.", "")),
            HingeSheet::answer);

    private HingeSheet() {}

    private static Sheet answer(Typed typed) {
        double chord = LinkageFields.length(typed, "chord");
        double span = LinkageFields.length(typed, "span");
        double share = typed.quantity("share", Measure.FRACTION, TradeUnit.PERCENT, 0.25);
        double deflection = LinkageFields.angle(typed, "deflection");
        double attack = LinkageFields.angle(typed, "attack");
        double speed = typed.quantity("speed", Measure.SPEED, TradeUnit.METRE_PER_SECOND, 1);
        double unsure = typed.quantity("unsure", Measure.SPEED, TradeUnit.METRE_PER_SECOND, 0);
        double altitude = typed.quantity("altitude", Measure.LENGTH, TradeUnit.METRE, 0);
        OptionalDouble air = typed.optional("air", Measure.TEMPERATURE, TradeUnit.CELSIUS);
        double ratio = typed.quantity("ratio", Measure.FRACTION, TradeUnit.PERCENT, 1);
        double efficiency = typed.quantity("efficiency", Measure.FRACTION, TradeUnit.PERCENT, 1);
        OptionalDouble stall = typed.optional("torque", Measure.TORQUE, TradeUnit.KILOGRAM_FORCE_CENTIMETRE);
        return typed.make(() -> {
            double density = StandardAir.density(altitude, air.isPresent() ? air.getAsDouble() : null);
            Estimate fast = Estimate.ofIndependent(speed, List.of(new Driver("airspeed", Math.abs(unsure))));
            AirLoad load = new AirLoad(chord, span, share, fast, density, attack);
            return sheet(load, new LoadedServo(load, efficiency), deflection, ratio, stall);
        });
    }

    private static Sheet sheet(AirLoad load, LoadedServo servo, double deflection, double ratio, OptionalDouble stall) {
        double design = servo.designNewtonMetres(deflection, ratio);
        List<Figure> figures = new ArrayList<>(List.of(
                Figure.exact(
                        "design_torque", "Servo torque to design for", design, TradeUnit.KILOGRAM_FORCE_CENTIMETRE, 2),
                Figure.of(
                        "expected_torque",
                        "Servo torque to expect",
                        servo.expectedNewtonMetres(deflection, ratio),
                        TradeUnit.KILOGRAM_FORCE_CENTIMETRE,
                        2),
                Figure.exact(
                        "hinge_moment",
                        "Hinge moment to design for",
                        load.designNewtonMetres(deflection),
                        TradeUnit.NEWTON_METRE,
                        4)));
        String margin = "";
        if (stall.isPresent() && design > 0) {
            figures.add(LinkageSheet.plain("margin", "Stall torque over it", stall.getAsDouble() / design));
            margin = String.format(
                    Locale.ROOT,
                    "; the servo has %.1f times that (%.0f times is usual)",
                    stall.getAsDouble() / design,
                    LoadedServo.WANTED_MARGIN);
        }
        List<String> notes = new ArrayList<>();
        notes.add("Two-dimensional: a finite span, a gap or a horn ahead of the hinge lowers the moment and is not"
                + " credited. Flutter is another matter.");
        if (deflection > AirLoad.ROUGH_BEYOND) {
            notes.add("Past 20° the flow leaves the surface; take the figure as an upper value.");
        }
        return new Sheet(
                "Design for " + TradeUnit.KILOGRAM_FORCE_CENTIMETRE.print(design, 2) + " at the servo" + margin + ".",
                figures,
                notes,
                Caution.MAKER_FIRST.sentence(),
                Working.of(step(load, deflection)));
    }

    private static Step step(AirLoad load, double deflection) {
        return new Step(
                "hinge moment",
                "H = (|C_hα|·α + |C_hδ|·δ) · ½ρV² · c_f² · b; servo = H · ratio / efficiency",
                List.of(
                        String.format(Locale.ROOT, "coefficient = %.4f", load.coefficient(deflection)),
                        String.format(Locale.ROOT, "density = %.4f kg/m³", load.density()),
                        String.format(Locale.ROOT, "½ρV² = %.1f Pa", load.dynamicPascals())),
                TradeUnit.NEWTON_METRE.print(load.designNewtonMetres(deflection), 4),
                Citation.published("Glauert, R. & M. 1095 (1927); ISO 2533:1975"));
    }
}
