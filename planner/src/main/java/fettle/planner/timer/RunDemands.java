package fettle.planner.timer;

import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.PackHistory;
import fettle.engine.pack.Run;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** The runs of a pack's record that tell what its craft draws. */
public final class RunDemands {
    /** End volts of a cell that count as the same [V]: two readings of ordinary meters; common practice, no source. */
    private static final double SAME_END_VOLTS = 0.03;

    private RunDemands() {}

    /**
     * Runs of a craft with what was put back after each, where one charge before the next run did it: two cannot be told from
     * a top-up. A run that followed another without a charge between is left out, since its charge put back both. So is one
     * whose charge ended below where the pack began the run, e.g. at storage: it put back less than the run took, and a timer by
     * it would come too late.
     *
     * @param craft its name, in any case; runs noted without a craft are left out
     */
    public static List<RunDemand> of(PackHistory history, String craft) {
        List<RunDemand> demands = new ArrayList<>();
        List<Run> runs = history.runs();
        for (int i = 0; i < runs.size(); i++) {
            Run run = runs.get(i);
            Instant after = i + 1 < runs.size() ? runs.get(i + 1).endedAt() : Instant.MAX;
            List<ChargeRecord> before = between(
                    history.charges(), i == 0 ? Instant.MIN : runs.get(i - 1).endedAt(), run.endedAt());
            boolean alone = i == 0 || !before.isEmpty();
            List<ChargeRecord> charges = between(history.charges(), run.endedAt(), after);
            boolean whole = charges.size() == 1 && endsAsHigh(charges.get(0), before, history);
            Double returned = whole ? charges.get(0).returnedCoulombs() : null;
            if (run.craft().equalsIgnoreCase(craft) && alone && returned != null && returned > 0) {
                demands.add(RunDemand.ofPutBack(history.pack().chemistry(), returned, run.durationSeconds()));
            }
        }
        return demands;
    }

    /** Whether a charge ended no lower than the pack began; where that was not noted, no lower than it was ever charged. */
    private static boolean endsAsHigh(ChargeRecord charge, List<ChargeRecord> before, PackHistory history) {
        Double end = charge.endPackVolts();
        if (end == null) {
            return true;
        }
        Double began = before.isEmpty() ? null : before.get(before.size() - 1).endPackVolts();
        double least = began != null
                ? began
                : history.charges().stream()
                        .map(ChargeRecord::endPackVolts)
                        .filter(Objects::nonNull)
                        .mapToDouble(Double::doubleValue)
                        .max()
                        .orElse(end);
        return end >= least - SAME_END_VOLTS * history.pack().cellsInSeries();
    }

    private static List<ChargeRecord> between(List<ChargeRecord> charges, Instant from, Instant to) {
        return charges.stream()
                .filter(charge ->
                        charge.endedAt().isAfter(from) && charge.endedAt().isBefore(to))
                .toList();
    }
}
