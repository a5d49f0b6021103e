package fettle.planner.timer;

import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.PackHistory;
import fettle.engine.pack.Run;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** The runs of a pack's record that tell what its craft draws. */
public final class RunDemands {
    private RunDemands() {}

    /**
     * Runs of a craft with what was put back after each: every charge up to the next run, of those runs alone that follow a
     * charge, so that nothing else was put back with it.
     *
     * @param craft its name; runs noted without a craft are left out
     */
    public static List<RunDemand> of(PackHistory history, String craft) {
        List<RunDemand> demands = new ArrayList<>();
        List<Run> runs = history.runs();
        for (int i = 0; i < runs.size(); i++) {
            Run run = runs.get(i);
            Instant before = i == 0 ? Instant.MIN : runs.get(i - 1).endedAt();
            Instant after = i + 1 < runs.size() ? runs.get(i + 1).endedAt() : Instant.MAX;
            double returned = returned(history.charges(), run.endedAt(), after);
            boolean chargedBefore = returned(history.charges(), before, run.endedAt()) > 0;
            if (run.craft().equals(craft) && chargedBefore && returned > 0) {
                demands.add(RunDemand.ofPutBack(history.pack().chemistry(), returned, run.durationSeconds()));
            }
        }
        return demands;
    }

    private static double returned(List<ChargeRecord> charges, Instant from, Instant to) {
        double coulombs = 0;
        for (ChargeRecord charge : charges) {
            Double returned = charge.returnedCoulombs();
            if (returned != null
                    && charge.endedAt().isAfter(from)
                    && charge.endedAt().isBefore(to)) {
                coulombs += returned;
            }
        }
        return coulombs;
    }
}
