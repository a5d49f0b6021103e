package fettle.planner.timer;

import fettle.engine.pack.model.PackModel;
import fettle.engine.rule.Limits;
import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a timer is asked for.
 *
 * @param pack the pack as it is known, at the charge and temperature it starts with
 * @param limits the rules that hold for it
 * @param runs earlier runs of the craft, the latest last, at least one
 * @param peakAmps peak current of the craft [A]; {@code null} if not known; not asked for where a run was logged
 * @param risk share of runs that may come to the limit before the timer, 0.001 … 0.5
 */
public record TimerQuestion(
        PackModel pack,
        Limits limits,
        List<RunDemand> runs,
        @Nullable Double peakAmps,
        double risk) {
    /** The risk taken where none is stated. */
    public static final double USUAL_RISK = 0.05;

    public TimerQuestion {
        runs = List.copyOf(runs);
        Faults faults = new Faults();
        faults.range("risk", "risk", risk, TradeUnit.PERCENT, 0.1, 50, "Usual is 5 %.");
        faults.range("peak", "peak current", peakAmps, TradeUnit.AMPERE, 0.01, 2000, "Leave it empty if not known.");
        if (runs.isEmpty()) {
            faults.add("runs", "there is no earlier run. Type one, as minutes and charge put back, or a typical one.");
        }
        faults.refuse();
    }

    /** The same with one more run known. */
    public TimerQuestion with(RunDemand run) {
        List<RunDemand> more = new ArrayList<>(runs);
        more.add(run);
        return new TimerQuestion(pack, limits, more, peakAmps, risk);
    }
}
