package fettle.engine.control.linkage;

import fettle.engine.control.Caution;
import fettle.engine.control.Remark;
import fettle.engine.working.Working;
import java.util.List;

/**
 * Pulses for wanted throws.
 *
 * @param up the surface at its upper end
 * @param down the surface at its lower end
 * @param centreSeconds the pulse at neutral [s]
 * @param marginRadians servo angle left before the nearer limit [rad]; infinite where there is none
 * @param remarks doubts
 * @param working how they were reached
 * @param cautions what to mind when setting them
 */
public record EndPoints(
        TravelPoint up,
        TravelPoint down,
        double centreSeconds,
        double marginRadians,
        List<Remark> remarks,
        Working working,
        List<Caution> cautions) {
    public EndPoints {
        remarks = List.copyOf(remarks);
        cautions = List.copyOf(cautions);
    }
}
