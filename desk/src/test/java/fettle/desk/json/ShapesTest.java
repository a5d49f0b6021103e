package fettle.desk.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fettle.desk.ShelfFixtures;
import fettle.engine.units.Fault;
import fettle.workshop.JournalEntry;
import java.util.List;
import org.junit.jupiter.api.Test;

final class ShapesTest {
    @Test
    void writesChoicesByLabelAndEstimatesWithTheirDrivers() throws Exception {
        JsonNode json = tree(ShelfFixtures.checked(3.84, 3.84));

        assertThat(json.at("/pack/chemistry").asText()).isEqualTo("LiPo");
        assertThat(json.at("/pack/identity").asText()).isEqualTo("confirmed");
        assertThat(json.at("/standing").asText()).isIn("ready", "tend");
        assertThat(json.at("/charge/value").asDouble()).isBetween(0.3, 0.7);
        assertThat(json.at("/charge/standardDeviation").asDouble()).isPositive();
        assertThat(json.at("/charge/drivers/0/cause").asText()).isNotEmpty();
        assertThat(json.at("/fullSince").isNull()).isTrue();
    }

    @Test
    void writesRulesWithTheirIdAndPrintedLimit() throws Exception {
        JsonNode json = tree(ShelfFixtures.lipoRules()).get(0);

        assertThat(json.get("id").asText()).isEqualTo("lipo.charge-limit");
        assertThat(json.get("quantity").asText()).isEqualTo("charge-limit");
        assertThat(json.get("printed").asText()).isEqualTo("4.20 V");
    }

    @Test
    void writesMomentsAsIso8601() throws Exception {
        JsonNode json = tree(new JournalEntry(1, ShelfFixtures.NOW, "Ada", "added pack P07", "P07", false, true));

        assertThat(json.get("at").asText()).isEqualTo("2026-05-09T08:00:00Z");
    }

    @Test
    void writesFaultsWithTheirField() {
        assertThat(Shapes.write(new Shapes.Refusal(List.of(new Fault("tag", "is empty.")))))
                .isEqualTo("{\"faults\":[{\"field\":\"tag\",\"sentence\":\"is empty.\"}]}");
    }

    private static JsonNode tree(Object record) throws Exception {
        return new ObjectMapper().readTree(Shapes.write(record));
    }
}
