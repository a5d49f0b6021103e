package fettle.planner.plan;

import fettle.planner.problem.Target;
import java.util.List;

/**
 * One charge or discharge of a plan.
 *
 * @param way name of the way to charge
 * @param packs tags of its packs
 * @param port name of its port
 * @param target what it ends at
 * @param startMinute when it starts
 * @param endMinute when it ends
 * @param fromFraction charge it starts from; of several packs the lowest
 * @param toFraction charge it ends at
 * @param sourceWattHours energy drawn from the source [Wh], rounded up
 */
public record ChargeJob(
        String way,
        List<String> packs,
        String port,
        Target target,
        int startMinute,
        int endMinute,
        double fromFraction,
        double toFraction,
        int sourceWattHours) {
    public ChargeJob {
        packs = List.copyOf(packs);
    }
}
