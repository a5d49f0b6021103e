package fettle.engine.health;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.pack.Check;
import fettle.engine.pack.Finding;
import fettle.engine.pack.MeterAccuracy;
import fettle.engine.pack.PackHistory;
import fettle.engine.pack.Packs;
import fettle.engine.rule.RuleSet;
import fettle.engine.trace.TraceRecord;
import fettle.engine.trace.TraceRecords;
import fettle.engine.units.TradeUnit;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

final class ResistanceLadderTest {
    private static final Instant DAY = Instant.parse("2026-05-02T10:00:00Z");

    private static PackHistory history(Check... checks) {
        return new PackHistory(Packs.lipo(1, 5000), List.of(checks), List.of(), List.of());
    }

    private static Check check(int day, double celsius, double milliohms) {
        return new Check(
                DAY.plusSeconds(86_400L * day),
                List.of(3.85),
                null,
                7200.0,
                TradeUnit.CELSIUS.toSi(celsius),
                List.of(milliohms / 1000),
                "charger",
                Set.of(),
                "");
    }

    @Test
    void eachMethodIsHeldAgainstItsOwnFirstReadingAt25Degrees() {
        List<LadderReading> ladder = ResistanceLadder.of(
                history(check(0, 25, 3.0), check(30, 25, 3.6)),
                List.of(
                        TraceRecords.resisting(DAY.plusSeconds(86_400 * 10), 0.005),
                        TraceRecords.resisting(DAY.plusSeconds(86_400 * 40), 0.0055)));
        assertThat(ladder).extracting(LadderReading::method).containsExactly("charger", "traces", "charger", "traces");
        assertThat(ladder.get(2).timesFirst()).isCloseTo(1.2, within(1e-9));
        assertThat(ladder.get(3).timesFirst()).isCloseTo(1.1, within(1e-9));
    }

    /** Arrhenius with 22 kJ/mol: 1.36 times the resistance at 15 °C. */
    @Test
    void aColdReadingIsNoRise() {
        double factor = Math.exp(22_000 / 8.314462618 * (1 / 288.15 - 1 / 298.15));
        List<LadderReading> ladder = ResistanceLadder.of(history(check(0, 25, 3), check(9, 15, 3 * factor)), List.of());
        assertThat(ladder.get(1).timesFirst()).isCloseTo(1, within(1e-9));
    }

    @Test
    void aCellWhoseTracesShowItDoubledLimitsThePack() {
        RuleSet rules = RuleSet.of(List.of());
        List<TraceRecord> doubled =
                List.of(TraceRecords.resisting(DAY, 0.003), TraceRecords.resisting(DAY.plusSeconds(86_400), 0.0061));
        PackHealth health = PackHealth.of(history(), doubled, rules, MeterAccuracy.USUAL);
        assertThat(health.findings()).extracting(Finding::id).containsExactly("resistance");
        assertThat(health.findings().get(0).statement()).contains("cell 1", "2.0 times its first", "±");
        List<TraceRecord> steady =
                List.of(TraceRecords.resisting(DAY, 0.003), TraceRecords.resisting(DAY.plusSeconds(86_400), 0.0031));
        PackHealth well = PackHealth.of(history(), steady, rules, MeterAccuracy.USUAL);
        assertThat(well.findings()).isEmpty();
        assertThat(well.passed()).anyMatch(passed -> passed.contains("by its traces"));
    }
}
