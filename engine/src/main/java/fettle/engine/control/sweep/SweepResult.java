package fettle.engine.control.sweep;

import fettle.engine.control.Caution;
import fettle.engine.control.Remark;
import fettle.engine.units.Estimate;
import fettle.engine.working.Working;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a sweep says.
 *
 * @param idleAmps current at rest [A]; {@code null} if it was not read and nothing was held
 * @param runningAmps current in the free travel [A]
 * @param frictionAmps running less idle [A]; {@code null} without idle
 * @param noiseAmps standard deviation of one reading [A]
 * @param low where binding begins on the side of short pulses; {@code null} if it does not within the sweep
 * @param high where it begins on the side of long pulses; {@code null} if it does not
 * @param span suggested end points
 * @param leastLoadSeconds pulse in the middle of the lightest stretch [s]
 * @param ends current at both ends of the sweep
 * @param spikes readings that stand out
 * @param hotSpots stretches of heavier running
 * @param angles slope, hysteresis and dead band; {@code null} without angles
 * @param remarks what it means, the most serious first
 * @param working how it was reached
 * @param cautions what to mind when acting on it
 */
public record SweepResult(
        @Nullable Estimate idleAmps,
        Estimate runningAmps,
        @Nullable Estimate frictionAmps,
        double noiseAmps,
        @Nullable Binding low,
        @Nullable Binding high,
        UsableSpan span,
        double leastLoadSeconds,
        EndLoads ends,
        List<Spike> spikes,
        List<HotSpot> hotSpots,
        @Nullable AngleTrack angles,
        List<Remark> remarks,
        Working working,
        List<Caution> cautions) {
    public SweepResult {
        spikes = List.copyOf(spikes);
        hotSpots = List.copyOf(hotSpots);
        remarks = List.copyOf(remarks);
        cautions = List.copyOf(cautions);
    }
}
