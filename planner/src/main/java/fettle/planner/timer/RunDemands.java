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
     * Runs of a craft with what was put back after each, where one charge before the next run did it: two cannot be told from
     * a top-up. A run that followed another without a charge between is left out, since its charge put back both.
     *
     * @param craft its name, in any case; runs noted without a craft are left out
     */
    public static List<RunDemand> of(PackHistory history, String craft) {
        List<RunDemand> demands = new ArrayList<>();
        List<Run> runs = history.runs();
        for (int i = 0; i < runs.size(); i++) {
            Run run = runs.get(i);
            Instant after = i + 1 < runs.size() ? runs.get(i + 1).endedAt() : Instant.MAX;
            boolean alone = i == 0
                    || !between(history.charges(), runs.get(i - 1).endedAt(), run.endedAt())
                            .isEmpty();
            List<ChargeRecord> charges = between(history.charges(), run.endedAt(), after);
            Double returned = charges.size() == 1 ? charges.get(0).returnedCoulombs() : null;
            if (run.craft().equalsIgnoreCase(craft) && alone && returned != null && returned > 0) {
                demands.add(RunDemand.ofPutBack(history.pack().chemistry(), returned, run.durationSeconds()));
            }
        }
        return demands;
    }

    private static List<ChargeRecord> between(List<ChargeRecord> charges, Instant from, Instant to) {
        return charges.stream()
                .filter(charge ->
                        charge.endedAt().isAfter(from) && charge.endedAt().isBefore(to))
                .toList();
    }
}
