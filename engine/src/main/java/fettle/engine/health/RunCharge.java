package fettle.engine.health;

import fettle.engine.cell.RestCurve;
import fettle.engine.health.filter.ChargeFilter;
import fettle.engine.health.filter.FilterNoise;
import fettle.engine.health.identification.CellBelief;
import fettle.engine.health.identification.IdentifiedCell;
import fettle.engine.health.identification.IdentifiedCircuit;
import fettle.engine.trace.Trace;
import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import java.util.List;

/**
 * A cell's charge through a run, followed by the sigma-point filter with the cell's own circuit.
 *
 * @param atEnd charge at the end of the run, fraction
 * @param unlikeItselfSeconds when the cell first behaved unlike its circuit for long, on the trace's clock [s]; NaN if never
 */
record RunCharge(Estimate atEnd, double unlikeItselfSeconds) {
    private static final double LEAST_CHARGE = 0.1; // below, a circuit of one resistance for all charges does not hold
    private static final double SETTLING_SECONDS = 60; // the start charge is a guess until then
    private static final double LEAST_SLOPE_VOLTS = 0.1; // of the flattest curves: LiFePO4
    private static final double HALF = 0.5;

    static RunCharge of(Trace trace, double[] volts, int from, int to, CellBelief belief, IdentifiedCircuit circuit) {
        ChargeFilter filter =
                ChargeFilter.starting(IdentifiedCell.of(belief, circuit), noise(belief), belief.startCharge());
        double[] seconds = trace.timeSeconds();
        double alarm = Double.NaN;
        for (int row = from; row < to; row++) {
            if (Double.isFinite(volts[row])) {
                boolean logged = trace.hasTemperature() && Double.isFinite(trace.temperatureKelvins()[row]);
                double kelvins = logged ? trace.temperatureKelvins()[row] : circuit.kelvins();
                filter.take(seconds[row], trace.currentAmps()[row], volts[row], kelvins);
                boolean heard = seconds[row] > seconds[from] + SETTLING_SECONDS
                        && filter.chargeFraction() > LEAST_CHARGE
                        && filter.alarms();
                alarm = heard && Double.isNaN(alarm) ? seconds[row] : alarm;
            }
        }
        return new RunCharge(withCurve(filter.charge(), belief.curve()), alarm);
    }

    /** The curve of other cells is off all the time, which no reading of the run can tell. */
    private static Estimate withCurve(Estimate charge, RestCurve curve) {
        double at = Math.max(0, Math.min(1, charge.value()));
        double byCurve = curve.bandVolts(at) / Math.max(LEAST_SLOPE_VOLTS, curve.slopeVolts(at));
        return Estimate.ofIndependent(
                charge.value(),
                List.of(
                        new Driver("circuit and count so far", charge.standardDeviation()),
                        new Driver("spread between cells of the curve", byCurve)));
    }

    /** The usual noise, the spread between cells of the curve added to what the circuit is off for a while. */
    private static FilterNoise noise(CellBelief belief) {
        FilterNoise usual = FilterNoise.USUAL;
        double slow = Math.hypot(usual.slowVolts(), belief.curve().bandVolts(HALF));
        return new FilterNoise(usual.quickVolts(), slow, usual.memorySeconds(), usual.driftPerHour());
    }

    String sentence(String who) {
        String end =
                who + " ends the run at " + TradeUnit.PERCENT.print(atEnd, 0) + " of its charge, by its own circuit";
        return Double.isNaN(unlikeItselfSeconds)
                ? end
                : end + "; from " + TradeUnit.SECOND.print(unlikeItselfSeconds, 0)
                        + " on it behaves unlike the rest of the run: look at its connections and its next check";
    }
}
