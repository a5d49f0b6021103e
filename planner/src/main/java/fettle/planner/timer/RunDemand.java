package fettle.planner.timer;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.power.ProfilePart;
import fettle.engine.trace.Trace;
import fettle.engine.units.Faults;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import java.util.List;

/**
 * What one run drew.
 *
 * @param coulombs charge it took [C], &gt; 0
 * @param seconds time under load [s], &gt; 0
 * @param profile its currents, part by part; empty where only charge and time are known
 */
public record RunDemand(double coulombs, double seconds, List<ProfilePart> profile) {
    /** Share of what is put back that a NiMH cell keeps; from memory. Lithium keeps all of it within a per cent. */
    private static final double NIMH_KEPT = 0.7;

    public RunDemand {
        profile = List.copyOf(profile);
        Faults faults = new Faults();
        faults.range("runs", "run time", seconds, TradeUnit.MINUTE, 0.1, 1440, "Give minutes.");
        faults.range("runs", "charge", coulombs, TradeUnit.MILLIAMPERE_HOUR, 0.1, 200_000, "Read it off the charger.");
        faults.refuse();
    }

    /** A run whose charge was read off the charger afterwards. */
    public static RunDemand ofPutBack(Chemistry chemistry, double returnedCoulombs, double seconds) {
        double kept = chemistry == Chemistry.NIMH ? NIMH_KEPT : 1;
        return new RunDemand(kept * returnedCoulombs, seconds, List.of());
    }

    /** A run that was logged, with its bursts kept. */
    public static RunDemand ofTrace(Trace trace) {
        if (!trace.hasCurrent()) {
            throw new InputException("runs", "the trace has no current; type the charge put back instead.");
        }
        BurstProfile profile = BurstProfile.of(trace);
        return new RunDemand(profile.netCoulombs(), trace.durationSeconds(), profile.parts());
    }

    /** Mean current [A]. */
    public double meanAmps() {
        return coulombs / seconds;
    }
}
