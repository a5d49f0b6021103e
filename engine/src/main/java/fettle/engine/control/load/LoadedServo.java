package fettle.engine.control.load;

import fettle.engine.control.Caution;
import fettle.engine.control.Remark;
import fettle.engine.control.linkage.TravelCurve;
import fettle.engine.control.linkage.TravelPoint;
import fettle.engine.control.servo.Ratings;
import fettle.engine.units.Estimate;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * A load through a linkage against a servo's torque at the voltage that is left.
 *
 * @param load what loads the surface
 * @param efficiencyFraction share of the servo's torque that arrives, 0.3 … 1; friction of rod ends and hinges
 */
public record LoadedServo(SurfaceLoad load, double efficiencyFraction) {
    /** Usual efficiency of a clean linkage; from memory. */
    public static final double USUAL_EFFICIENCY = 0.85;

    /** Stall torque over torque to design for that leaves speed and cool running; common practice, no source. */
    public static final double WANTED_MARGIN = 2;

    public LoadedServo {
        if (!(efficiencyFraction >= 0.3 && efficiencyFraction <= 1)) {
            throw new InputException(
                    "efficiency", "efficiency of the linkage is outside 30 % to 100 %. A clean one has about 85 %.");
        }
    }

    /**
     * The load over a travel.
     *
     * @param travel surface over pulses
     * @param ratings the servo's data
     * @param volts voltage at the servo with the battery sagged [V]
     * @throws InputException if the data does not cover that voltage
     */
    public LoadReport over(TravelCurve travel, Ratings ratings, double volts) {
        double stall = ratings.at(volts).stallNewtonMetres();
        List<ServoLoad> loads = travel.points().stream().map(this::at).toList();
        ServoLoad heaviest = loads.stream()
                .max(Comparator.comparingDouble(ServoLoad::servoNewtonMetres))
                .orElseThrow();
        double margin = stall / heaviest.servoNewtonMetres();
        return new LoadReport(
                loads,
                heaviest,
                stall,
                margin,
                remarks(heaviest, margin),
                Working.of(moment(heaviest), torque(heaviest, stall, volts, margin)),
                Caution.moving());
    }

    /**
     * Servo torque to design for [N·m]: moment · |ratio| / efficiency.
     *
     * @param ratio d(surface)/d(servo) there
     */
    public double designNewtonMetres(double surfaceRadians, double ratio) {
        return load.designNewtonMetres(surfaceRadians) * Math.abs(ratio) / efficiencyFraction;
    }

    /** Servo torque to expect [N·m], with ±. */
    public Estimate expectedNewtonMetres(double surfaceRadians, double ratio) {
        return load.expectedNewtonMetres(surfaceRadians).times(Math.abs(ratio) / efficiencyFraction);
    }

    private ServoLoad at(TravelPoint point) {
        double surface = point.position().surfaceRadians();
        double ratio = point.position().ratio();
        return new ServoLoad(
                point,
                load.designNewtonMetres(surface),
                designNewtonMetres(surface, ratio),
                expectedNewtonMetres(surface, ratio));
    }

    private List<Remark> remarks(ServoLoad heaviest, double margin) {
        List<Remark> remarks = new ArrayList<>();
        if (margin < WANTED_MARGIN) {
            remarks.add(
                    new Remark(
                            margin < 1 ? "stalls" : "thin-margin",
                            String.format(
                                    Locale.ROOT,
                                    "at %s the servo has %.2f times the torque to design for; %s times is usual (common"
                                            + " practice, no source)",
                                    TradeUnit.MICROSECOND.print(heaviest.point().pulseSeconds(), 0),
                                    margin,
                                    WANTED_MARGIN),
                            "Use more servo travel on a shorter arm or longer horn, less throw, a stronger servo or less speed."));
        }
        double surface = Math.abs(heaviest.point().position().surfaceRadians());
        if (load instanceof AirLoad && surface > AirLoad.ROUGH_BEYOND) {
            remarks.add(new Remark(
                    "separated-flow",
                    "at " + TradeUnit.DEGREE.print(surface, 0) + " the flow leaves the surface; the estimate is rough",
                    "Take it as an upper value, not a measurement."));
        }
        return remarks;
    }

    private Step moment(ServoLoad heaviest) {
        double surface = heaviest.point().position().surfaceRadians();
        String result = TradeUnit.NEWTON_METRE.print(heaviest.hingeNewtonMetres(), 4) + " to design for, "
                + TradeUnit.NEWTON_METRE.print(load.expectedNewtonMetres(surface), 4) + " to expect";
        if (load instanceof AirLoad air) {
            return new Step(
                    "hinge moment",
                    "H = (|C_hα|·α + |C_hδ|·δ) · ½ρV² · c_f² · b; two-dimensional, finite span not credited",
                    List.of(
                            String.format(Locale.ROOT, "C_hα = %.4f", ThinAerofoil.momentPerAttack(air.chordRatio())),
                            String.format(
                                    Locale.ROOT, "C_hδ = %.4f", ThinAerofoil.momentPerDeflection(air.chordRatio())),
                            "α = " + TradeUnit.DEGREE.print(air.attackRadians(), 1),
                            "δ = " + TradeUnit.DEGREE.print(surface, 1),
                            String.format(Locale.ROOT, "½ρV² = %.1f Pa", air.dynamicPascals())),
                    result,
                    Citation.published("Glauert, R. & M. 1095 (1927); ISO 2533:1975"));
        }
        return new Step("moment", "as entered", List.of(), result, Citation.commonPractice("entered or measured"));
    }

    private Step torque(ServoLoad heaviest, double stall, double volts, double margin) {
        return new Step(
                "servo torque",
                "T = H · |d(surface)/d(servo)| / efficiency; margin = stall torque / T",
                List.of(
                        String.format(
                                Locale.ROOT,
                                "ratio = %.3f",
                                Math.abs(heaviest.point().position().ratio())),
                        String.format(Locale.ROOT, "efficiency = %.2f", efficiencyFraction),
                        "stall torque at " + TradeUnit.VOLT.print(volts, 2) + " = "
                                + TradeUnit.KILOGRAM_FORCE_CENTIMETRE.print(stall, 2)),
                TradeUnit.KILOGRAM_FORCE_CENTIMETRE.print(heaviest.servoNewtonMetres(), 2)
                        + String.format(Locale.ROOT, ", margin %.2f", margin),
                Citation.published("virtual work on the linkage"));
    }
}
