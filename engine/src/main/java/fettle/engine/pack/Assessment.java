package fettle.engine.pack;

import fettle.engine.units.Estimate;
import fettle.engine.working.Working;
import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The state of a pack: a pure function of record, rules and now.
 *
 * @param pack the pack
 * @param standing the worst that any finding allows
 * @param cells per-cell state from the latest check; empty if cells were not read
 * @param charge fraction of full of the weakest cell (or mean cell if only pack volts); {@code null} if not known
 * @param capacity what it holds from empty to full, beside its label
 * @param usableCoulombs charge above reserve [C], limited by the weakest cell; {@code null} if not known
 * @param imbalanceVolts largest minus least rest volts [V]; {@code null} if cells were not read
 * @param imbalanceCoulombs the same as charge [C]; {@code null} if cells were not read
 * @param fullSince since when it has been kept full; {@code null} if it is not
 * @param latestCheckAt when it was last checked; {@code null} if never
 * @param temperatureKelvins pack temperature now [K], from a check in the last three hours; {@code null} if there is none
 * @param counts what the record counts
 * @param findings most serious first
 * @param passed the checks it passed, in words
 * @param working how the pack's numbers were reached
 */
public record Assessment(
        Pack pack,
        Standing standing,
        List<CellState> cells,
        @Nullable Estimate charge,
        PresentCapacity capacity,
        @Nullable Estimate usableCoulombs,
        @Nullable Double imbalanceVolts,
        @Nullable Estimate imbalanceCoulombs,
        @Nullable Instant fullSince,
        @Nullable Instant latestCheckAt,
        @Nullable Double temperatureKelvins,
        Counts counts,
        List<Finding> findings,
        List<String> passed,
        Working working) {
    public Assessment {
        cells = List.copyOf(cells);
        findings = List.copyOf(findings);
        passed = List.copyOf(passed);
    }

    /** The same of a pack that is out of use. */
    public Assessment retired() {
        return new Assessment(
                pack,
                Standing.RETIRED,
                cells,
                charge,
                capacity,
                usableCoulombs,
                imbalanceVolts,
                imbalanceCoulombs,
                fullSince,
                latestCheckAt,
                temperatureKelvins,
                counts,
                findings,
                passed,
                working);
    }

    /** The same of the pack at another temperature [K]. */
    public Assessment at(double kelvins) {
        return new Assessment(
                pack,
                standing,
                cells,
                charge,
                capacity,
                usableCoulombs,
                imbalanceVolts,
                imbalanceCoulombs,
                fullSince,
                latestCheckAt,
                kelvins,
                counts,
                findings,
                passed,
                working);
    }

    /** The same with what the pack's health says: standing is the worst of both. */
    public Assessment with(List<Finding> more, List<String> alsoPassed) {
        List<Finding> all = Stream.concat(findings.stream(), more.stream())
                .sorted(Comparator.comparing(Finding::standing).reversed())
                .toList();
        return new Assessment(
                pack,
                all.isEmpty()
                        ? standing
                        : Collections.max(List.of(standing, all.get(0).standing())),
                cells,
                charge,
                capacity,
                usableCoulombs,
                imbalanceVolts,
                imbalanceCoulombs,
                fullSince,
                latestCheckAt,
                temperatureKelvins,
                counts,
                all,
                Stream.concat(passed.stream(), alsoPassed.stream()).toList(),
                working);
    }

    /** How long the pack has been kept full. */
    public Duration fullFor(Instant now) {
        return fullSince == null ? Duration.ZERO : Duration.between(fullSince, now);
    }

    /**
     * What the record counts.
     *
     * @param charges charges noted
     * @param runs runs noted
     * @param overDischarges checks with a cell below the rest minimum
     * @param overCharges checks or charges above the charge limit
     * @param overTemperatures entries above the temperature limit
     */
    public record Counts(int charges, int runs, int overDischarges, int overCharges, int overTemperatures) {}
}
