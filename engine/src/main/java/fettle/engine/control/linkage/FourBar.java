package fettle.engine.control.linkage;

import fettle.engine.units.Faults;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A rod from servo arm to control horn: the planar four-bar.
 *
 * <p>Formula: |hinge + b·e^(iψ) − a·e^(iφ)| = L, φ = arm direction, ψ = horn direction; L is such that the surface is at 0
 * when the servo is. Ratio by virtual work: dψ/dφ = r_a / r_b, the moment arms of the rod's line about shaft and hinge.
 * <p>Leaves out: play, flex of rod and horn, out-of-plane angles of the rod.
 *
 * @param armMetres radius of the servo arm's hole [m], 2 … 100 mm
 * @param hornMetres radius of the horn's hole from the hinge line [m], 2 … 200 mm
 * @param hingeXMetres hinge aft of the servo shaft [m]
 * @param hingeYMetres hinge above the servo shaft [m]; the distance shaft to hinge is 2 mm … 3 m
 * @param armNeutralRadians direction of the arm at servo angle 0 [rad], from aft, counter-clockwise
 * @param hornNeutralRadians direction of the horn's hole from the hinge at surface angle 0 [rad]
 */
public record FourBar(
        double armMetres,
        double hornMetres,
        double hingeXMetres,
        double hingeYMetres,
        double armNeutralRadians,
        double hornNeutralRadians)
        implements Linkage {
    /** Sine of the smallest angle between rod and arm or horn at neutral that still tells where the surface will go. */
    private static final double STRAIGHT = 1e-3;

    /** Surface angles nearer than this belong to one point of the motion [rad]; far above rounding. */
    private static final double SAME_POINT = 1e-5;

    public FourBar {
        String mend = "Measure from the pivot to the hole.";
        Faults faults = new Faults();
        faults.range("arm", "servo arm", armMetres, TradeUnit.MILLIMETRE, 2, 100, mend);
        faults.range("horn", "control horn", hornMetres, TradeUnit.MILLIMETRE, 2, 200, mend);
        faults.range(
                "hinge",
                "distance from servo shaft to hinge",
                Math.hypot(hingeXMetres, hingeYMetres),
                TradeUnit.MILLIMETRE,
                2,
                3000,
                "Measure aft and up from the servo shaft.");
        faults.range("armNeutral", "arm direction", armNeutralRadians, TradeUnit.DEGREE, -360, 360, "Give degrees.");
        faults.range("hornNeutral", "horn direction", hornNeutralRadians, TradeUnit.DEGREE, -360, 360, "Give degrees.");
        faults.refuse();
        if (standsStraight(armMetres, hornMetres, hingeXMetres, hingeYMetres, armNeutralRadians, hornNeutralRadians)) {
            throw new InputException(
                    "hornNeutral",
                    "at neutral the rod is in line with the arm or the horn, so the surface could move either way."
                            + " Turn the arm or the horn towards a right angle with the rod.");
        }
    }

    /** Whether the rod would stand in line with arm or horn at neutral; parameters as of the record. */
    public static boolean standsStraight(
            double armMetres,
            double hornMetres,
            double hingeXMetres,
            double hingeYMetres,
            double armNeutralRadians,
            double hornNeutralRadians) {
        Closure parts =
                new Closure(armMetres, hornMetres, hingeXMetres, hingeYMetres, armNeutralRadians, hornNeutralRadians);
        return !parts.clearOfLines(STRAIGHT) || !parts.reversed().clearOfLines(STRAIGHT);
    }

    /** The rod's length between the holes [m]. */
    public double rodMetres() {
        return closure().rod();
    }

    @Override
    public Position at(double servoRadians) {
        double surfaceRadians = surfaceRadians(servoRadians);
        return new Position(
                servoRadians,
                surfaceRadians,
                rodLine(servoRadians, surfaceRadians).ratio());
    }

    /** Where the rod's ends are at a position of this linkage. */
    public RodEnds rodEnds(Position position) {
        double arm = armNeutralRadians + position.servoRadians();
        double horn = hornNeutralRadians + position.surfaceRadians();
        return new RodEnds(
                armMetres * Math.cos(arm),
                armMetres * Math.sin(arm),
                hingeXMetres + hornMetres * Math.cos(horn),
                hingeYMetres + hornMetres * Math.sin(horn));
    }

    /** The line of the rod at a servo angle [rad]. */
    public RodLine rodLine(double servoRadians) {
        return rodLine(servoRadians, surfaceRadians(servoRadians));
    }

    @Override
    public double playRadians(double servoRadians, double jointPlayMetres) {
        return jointPlayMetres / Math.abs(rodLine(servoRadians).hingeArmMetres());
    }

    @Override
    public double servoRadians(double surfaceRadians) {
        Closure reversed = closure().reversed();
        OptionalDouble servo = reversed.driven(surfaceRadians);
        if (!reversed.reaches(surfaceRadians) || servo.isEmpty() || !sameMotion(servo.getAsDouble(), surfaceRadians)) {
            throw new InputException(
                    "surfaceAngle",
                    "the surface cannot reach " + TradeUnit.DEGREE.print(surfaceRadians, 2) + "; " + reach()
                            + ". Ask for less throw, or take a longer servo arm or a shorter horn.");
        }
        return servo.getAsDouble();
    }

    @Override
    public List<TravelLimit> limits() {
        Closure forward = closure();
        List<TravelLimit> limits = new ArrayList<>();
        for (Closure.Line line : forward.nearestLines()) {
            limits.add(new TravelLimit(
                    line.driverAngle(),
                    forward.driven(line.driverAngle()).orElseThrow(),
                    Alignment.ofHorn(line.meeting())));
        }
        Closure reversed = forward.reversed();
        for (Closure.Line line : reversed.nearestLines()) {
            double servo = reversed.driven(line.driverAngle()).orElseThrow();
            if (sameMotion(servo, line.driverAngle())) {
                limits.add(new TravelLimit(servo, line.driverAngle(), Alignment.ofArm(line.meeting())));
            }
        }
        limits.sort(Comparator.comparingDouble(limit -> Math.abs(limit.servoRadians())));
        return List.copyOf(limits);
    }

    /** How much longer the rod is than the gap between the holes with arm and horn at two angles [m]. */
    double slackMetres(double servoRadians, double surfaceRadians) {
        double gapX = hingeXMetres
                + hornMetres * Math.cos(hornNeutralRadians + surfaceRadians)
                - armMetres * Math.cos(armNeutralRadians + servoRadians);
        double gapY = hingeYMetres
                + hornMetres * Math.sin(hornNeutralRadians + surfaceRadians)
                - armMetres * Math.sin(armNeutralRadians + servoRadians);
        return rodMetres() - Math.hypot(gapX, gapY);
    }

    private double surfaceRadians(double servoRadians) {
        Closure closure = closure();
        OptionalDouble surface = closure.driven(servoRadians);
        if (surface.isPresent() && closure.reaches(servoRadians)) {
            return surface.getAsDouble();
        }
        throw new InputException(
                "servoAngle",
                "the linkage cannot close at servo angle " + TradeUnit.DEGREE.print(servoRadians, 2) + "; " + reach()
                        + ". Take less travel, a shorter servo arm or a longer horn.");
    }

    private String reach() {
        List<String> ends = new ArrayList<>();
        for (TravelLimit limit : limits()) {
            ends.add("at servo " + TradeUnit.DEGREE.print(limit.servoRadians(), 2) + ", surface "
                    + TradeUnit.DEGREE.print(limit.surfaceRadians(), 2) + ", "
                    + limit.alignment().label());
        }
        return ends.isEmpty() ? "its servo arm turns freely" : String.join("; ", ends);
    }

    /** Whether a pair of angles is reached from neutral without passing a toggle. */
    private boolean sameMotion(double servoRadians, double surfaceRadians) {
        Closure closure = closure();
        OptionalDouble surface = closure.driven(servoRadians);
        return surface.isPresent()
                && closure.reaches(servoRadians)
                && Math.abs(surface.getAsDouble() - surfaceRadians) < SAME_POINT;
    }

    private RodLine rodLine(double servoRadians, double surfaceRadians) {
        double armX = armMetres * Math.cos(armNeutralRadians + servoRadians);
        double armY = armMetres * Math.sin(armNeutralRadians + servoRadians);
        double hornX = hornMetres * Math.cos(hornNeutralRadians + surfaceRadians);
        double hornY = hornMetres * Math.sin(hornNeutralRadians + surfaceRadians);
        double rodX = (hingeXMetres + hornX - armX) / rodMetres();
        double rodY = (hingeYMetres + hornY - armY) / rodMetres();
        double hingeArm = hornX * rodY - hornY * rodX;
        return new RodLine(
                armX * rodY - armY * rodX, hingeArm, Math.atan2(Math.abs(hingeArm), hornX * rodX + hornY * rodY));
    }

    private Closure closure() {
        return new Closure(armMetres, hornMetres, hingeXMetres, hingeYMetres, armNeutralRadians, hornNeutralRadians);
    }
}
