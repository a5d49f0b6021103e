package fettle.engine.health.identification;

import fettle.engine.cell.RestCurve;
import fettle.engine.units.Estimate;
import fettle.engine.units.InputException;
import java.util.List;

/**
 * What is believed of a cell before its log is read. A tight belief is as good as given, a loose one is refined.
 *
 * @param curve rest volts against charge
 * @param startCharge charge at the first row, fraction
 * @param capacityCoulombs charge from empty to full [C]
 */
public record CellBelief(RestCurve curve, Estimate startCharge, Estimate capacityCoulombs) {
    public CellBelief {
        if (!(capacityCoulombs.value() > 0)
                || !(capacityCoulombs.standardDeviation() > 0)
                || !(startCharge.standardDeviation() > 0)) {
            throw new InputException(
                    "belief",
                    "capacity and start charge need a value and a ± of more than 0. Give the label's capacity and a wide ±.");
        }
    }

    /** Belief from rest volts before the log and the label. */
    public static CellBelief of(
            RestCurve curve, double restVolts, double restDeviationVolts, Estimate capacityCoulombs) {
        double charge = Math.max(-0.05, Math.min(1.05, curve.charge(restVolts)));
        double slope = Math.max(curve.slopeVolts(charge), LEAST_SLOPE_VOLTS);
        return new CellBelief(curve, new Estimate(charge, restDeviationVolts / slope, List.of()), capacityCoulombs);
    }

    /** A flatter curve than this says nothing of charge [V per whole charge]. */
    private static final double LEAST_SLOPE_VOLTS = 0.02;
}
