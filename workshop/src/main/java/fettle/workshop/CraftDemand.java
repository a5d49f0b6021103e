package fettle.workshop;

import fettle.engine.pack.PackHistory;
import fettle.planner.timer.RunDemand;
import fettle.planner.timer.RunDemands;
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
        double[] amps = histories.stream()
                .flatMap(history -> RunDemands.of(history, craft).stream())
                .mapToDouble(RunDemand::meanAmps)
                .toArray();
        if (amps.length < LEAST) {
            return Optional.empty();
        }
        DescriptiveStatistics runs = new DescriptiveStatistics(amps);
        return Optional.of(new CraftDemand(runs.getPercentile(50), runs.getStandardDeviation(), amps.length));
    }
}
