package fettle.engine.control.linkage;

import fettle.engine.control.Caution;
import fettle.engine.control.Remark;
import fettle.engine.working.Working;
import java.util.List;

/**
 * A surface over a span of pulses.
 *
 * @param points from the lowest pulse to the highest
 * @param range the nearest limits on either side
 * @param marginRadians servo angle left before the nearer limit [rad]; infinite where there is none
 * @param differential larger over smaller throw at the two ends, ≥ 1
 * @param remarks doubts
 * @param working how it was reached
 * @param cautions what to mind when trying it
 */
public record TravelCurve(
        List<TravelPoint> points,
        TravelRange range,
        double marginRadians,
        double differential,
        List<Remark> remarks,
        Working working,
        List<Caution> cautions) {
    public TravelCurve {
        points = List.copyOf(points);
        remarks = List.copyOf(remarks);
        cautions = List.copyOf(cautions);
    }
}
