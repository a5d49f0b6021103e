package fettle.engine.control.linkage.choice;

import fettle.engine.control.linkage.FourBar;
import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;
import java.util.List;
import java.util.stream.Stream;

/**
 * The parts at hand.
 *
 * @param armHolesMetres radii of the servo arm's holes [m]
 * @param hornHolesMetres radii of the horn's holes from the hinge line [m]
 * @param armNeutralsRadians directions the arm can have at neutral [rad], one for each spline step that is tried
 * @param hornNeutralRadians direction of the horn's holes at neutral [rad]
 * @param hingeXMetres hinge aft of the servo shaft [m]
 * @param hingeYMetres hinge above the servo shaft [m]
 * @param servoTravelRadians how far the servo turns either way from neutral [rad], 5° … 120°
 */
public record Fittings(
        List<Double> armHolesMetres,
        List<Double> hornHolesMetres,
        List<Double> armNeutralsRadians,
        double hornNeutralRadians,
        double hingeXMetres,
        double hingeYMetres,
        double servoTravelRadians) {
    public Fittings {
        armHolesMetres = List.copyOf(armHolesMetres);
        hornHolesMetres = List.copyOf(hornHolesMetres);
        armNeutralsRadians = List.copyOf(armNeutralsRadians);
        Faults faults = new Faults();
        if (armHolesMetres.isEmpty()) {
            faults.add("armHoles", "no hole of the servo arm is given. Give the radius of each hole.");
        }
        if (hornHolesMetres.isEmpty()) {
            faults.add(
                    "hornHoles", "no hole of the horn is given. Give the distance of each hole from the hinge line.");
        }
        if (armNeutralsRadians.isEmpty()) {
            faults.add("armNeutrals", "no direction of the arm is given. Give at least its direction at neutral.");
        }
        String mend = "Measure from the pivot to the hole.";
        armHolesMetres.forEach(
                hole -> faults.range("armHoles", "hole of the servo arm", hole, TradeUnit.MILLIMETRE, 2, 100, mend));
        hornHolesMetres.forEach(
                hole -> faults.range("hornHoles", "hole of the horn", hole, TradeUnit.MILLIMETRE, 2, 200, mend));
        faults.range(
                "servoTravel", "servo travel", servoTravelRadians, TradeUnit.DEGREE, 5, 120, "Give one side's travel.");
        faults.refuse();
    }

    /** How many ways there are to put them together. */
    int combinations() {
        return armHolesMetres.size() * hornHolesMetres.size() * armNeutralsRadians.size();
    }

    /** Every linkage these parts make; not those that stand in line at neutral, which could move either way. */
    Stream<FourBar> linkages() {
        return armHolesMetres.stream()
                .flatMap(arm -> hornHolesMetres.stream()
                        .flatMap(horn -> armNeutralsRadians.stream().flatMap(neutral -> linkage(arm, horn, neutral))));
    }

    private Stream<FourBar> linkage(double arm, double horn, double neutral) {
        return FourBar.standsStraight(arm, horn, hingeXMetres, hingeYMetres, neutral, hornNeutralRadians)
                ? Stream.empty()
                : Stream.of(new FourBar(arm, horn, hingeXMetres, hingeYMetres, neutral, hornNeutralRadians));
    }
}
