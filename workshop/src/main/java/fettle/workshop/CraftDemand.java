package fettle.workshop;

import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.PackHistory;
import fettle.engine.pack.Run;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hipparchus.stat.descriptive.DescriptiveStatistics;

/**
 * What a craft draws, from its runs: what was put back after each over how long it lasted.
 *
 * @param amps mean current, median over the runs [A]
 * @param spreadAmps standard deviation over the runs [A]
 * @param runs how many runs say so
 */
record CraftDemand(double amps, double spreadAmps, int runs) {
    /** Fewer runs say little about a craft. */
    private static final int LEAST = 3;

    /** The demand by a shelf's records; empty if fewer than three runs were followed by a noted put-back. */
    static Optional<CraftDemand> of(String craft, List<PackHistory> histories) {
        List<Double> amps = new ArrayList<>();
        histories.forEach(history -> ofPack(craft, history, amps));
        if (amps.size() < LEAST) {
            return Optional.empty();
        }
        DescriptiveStatistics runs = new DescriptiveStatistics(
                amps.stream().mapToDouble(Double::doubleValue).toArray());
        return Optional.of(new CraftDemand(runs.getPercentile(50), runs.getStandardDeviation(), amps.size()));
    }

    private static void ofPack(String craft, PackHistory history, List<Double> amps) {
        List<Run> runs = history.runs().stream()
                .sorted(Comparator.comparing(Run::endedAt))
                .toList();
        for (int at = 0; at < runs.size(); at++) {
            Run run = runs.get(at);
            Instant next = at + 1 < runs.size() ? runs.get(at + 1).endedAt() : Instant.MAX;
            if (run.craft().equalsIgnoreCase(craft)) {
                putBack(history, run.endedAt(), next).ifPresent(coulombs -> amps.add(coulombs / run.durationSeconds()));
            }
        }
    }

    /** What was put back between two runs, where one charge did it; two cannot be told from a top-up. */
    private static Optional<Double> putBack(PackHistory history, Instant after, Instant before) {
        List<ChargeRecord> charges = history.charges().stream()
                .filter(charge ->
                        charge.endedAt().isAfter(after) && charge.endedAt().isBefore(before))
                .toList();
        return charges.size() == 1 ? Optional.ofNullable(charges.get(0).returnedCoulombs()) : Optional.empty();
    }
}
