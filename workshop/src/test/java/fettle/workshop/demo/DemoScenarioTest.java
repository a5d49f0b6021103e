package fettle.workshop.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import fettle.engine.pack.Assessment;
import fettle.engine.pack.Finding;
import fettle.engine.pack.MeterAccuracy;
import fettle.engine.pack.Pack;
import fettle.engine.pack.PackHistory;
import fettle.engine.pack.assessment.PackAssessor;
import fettle.engine.rule.RuleSet;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

final class DemoScenarioTest {
    private static final Instant NOW = Instant.parse("2026-05-16T07:30:00Z");

    @Test
    void tellsTheSameStoryForTheSameInstant() {
        assertThat(histories(NOW)).isEqualTo(histories(NOW));
    }

    @Test
    void coversFiveChemistriesFromOneToTwelveCells() {
        List<Pack> packs = histories(NOW).stream().map(PackHistory::pack).toList();

        assertThat(packs).hasSizeGreaterThanOrEqualTo(14);
        assertThat(packs.stream().map(Pack::chemistry).distinct()).hasSize(5);
        assertThat(packs.stream().mapToInt(Pack::cellsInSeries).min()).hasValue(1);
        assertThat(packs.stream().mapToInt(Pack::cellsInSeries).max()).hasValue(12);
        assertThat(DemoKit.craft())
                .hasSize(6)
                .extracting(craft -> craft.kind())
                .satisfies(kinds -> assertThat(kinds.stream().distinct()).hasSize(5));
        assertThat(DemoKit.chargers()).hasSize(4);
        assertThat(DemoKit.chargers().stream()
                        .mapToInt(charger -> charger.ports().size())
                        .sum())
                .isEqualTo(7);
        assertThat(DemoKit.sources()).hasSize(3);
    }

    @Test
    void plantsEachFaultAndNoOther() {
        Map<String, List<String>> serious = new TreeMap<>();
        for (PackHistory history : histories(NOW)) {
            Assessment state = PackAssessor.assess(history, RuleSet.of(List.of()), MeterAccuracy.USUAL, NOW);
            serious.put(
                    history.pack().tag(),
                    state.findings().stream()
                            .map(Finding::id)
                            .filter(id -> !id.equals("not-full"))
                            .collect(Collectors.toList()));
        }

        serious.values().removeIf(List::isEmpty);
        assertThat(serious).contains(entry("P05", List.of("swelling")), entry("P07", List.of("never-checked")));
        assertThat(serious.get("F02")).containsExactly("imbalance");
        assertThat(serious.get("P02")).contains("drifting-cell");
        assertThat(serious.get("P03")).containsExactly("kept-full");
        assertThat(serious.get("P04")).contains("over-discharge");
        assertThat(serious.get("P08")).contains("contradiction", "identity", "pack-volts-only");
        assertThat(serious).containsOnlyKeys("P02", "P03", "P04", "P05", "P07", "P08", "G03", "F02");
    }

    private static List<PackHistory> histories(Instant now) {
        return DemoScenario.stories(now).stream().map(PackStory::history).toList();
    }
}
