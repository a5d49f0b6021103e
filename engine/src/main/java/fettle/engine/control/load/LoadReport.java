package fettle.engine.control.load;

import fettle.engine.control.Caution;
import fettle.engine.control.Remark;
import fettle.engine.working.Working;
import java.util.List;

/**
 * A servo under load over its travel.
 *
 * @param loads point by point
 * @param heaviest the point that asks for the most torque
 * @param stallNewtonMetres the servo's stall torque at the voltage stated [N·m]
 * @param margin stall torque over the torque to design for; infinite without load
 * @param remarks doubts
 * @param working how it was reached
 * @param cautions what to mind
 */
public record LoadReport(
        List<ServoLoad> loads,
        ServoLoad heaviest,
        double stallNewtonMetres,
        double margin,
        List<Remark> remarks,
        Working working,
        List<Caution> cautions) {
    public LoadReport {
        loads = List.copyOf(loads);
        remarks = List.copyOf(remarks);
        cautions = List.copyOf(cautions);
    }
}
