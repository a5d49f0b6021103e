package fettle.cli;

import static fettle.cli.ShellAssert.done;
import static fettle.cli.ShellAssert.misused;
import static fettle.cli.ShellAssert.refused;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class SimulateWordTest {
    /** One ohmic cell on a straight curve: 3.2 V to 4.1 V, 2 Ah, 10 mΩ. */
    private static final String SCENARIO = """
            {
              "cells": {"A": {"curve": [[0, 3.2], [1, 4.1]], "capacity_ah": 2, "r0_ohms": 0.01}},
              "packs": [{"name": "P", "cells": [{"like": "A", "charge": 1}]}],
              "sample_seconds": 60,
              "steps": [{"name": "load", "discharge_amps": 10, "until": {"volts_at_most": 3.55}}]
            }
            """;

    @TempDir
    private Path home;

    @Test
    void printsTheSummary() throws IOException {
        Shell.Result result = simulate(SCENARIO);
        done(result);
        // 4.1 V − 0.1 V to 3.55 V: half the line, so 1 Ah at 10 A
        assertThat(result.out()).contains("load", "360.00", "terminal volts at most 3.55 V", "out 1.00000 Ah");
    }

    @Test
    void printsTheSeriesAsCsvAndTheSummaryBesideIt() throws IOException {
        Shell.Result result = simulate(SCENARIO, "--csv");
        assertThat(result.code()).isZero();
        List<String> lines = result.out().lines().toList();
        assertThat(lines.get(0)).startsWith("time_seconds,step,volts,amps,P_amps,P_cell1_volts,P_cell1_rest_volts");
        assertThat(lines.get(1)).startsWith("0,1,4,10,10,4,4.1,10,1,25");
        assertThat(lines.get(lines.size() - 1)).startsWith("360,1,3.55,10");
        assertThat(lines).hasSizeBetween(8, 9);
        assertThat(result.err()).contains("out 1.00000 Ah");
    }

    @Test
    void printsEverythingAsJson() throws IOException {
        Shell.Result result = simulate(SCENARIO, "--json");
        done(result);
        JsonNode told = new ObjectMapper().readTree(result.out());
        assertThat(told.at("/summary/seconds").asDouble()).isCloseTo(360, within(1e-6));
        assertThat(told.at("/summary/passed/outCoulombs").asDouble()).isCloseTo(3600, within(1e-5));
        assertThat(told.at("/summary/steps/0/endedBy/kind").asText()).isEqualTo("volts_at_most");
        assertThat(told.get("columns")).hasSameSizeAs(told.at("/series/0"));
    }

    @Test
    void runsEveryExampleOfTheManual() throws IOException {
        List<String> examples = new ArrayList<>();
        Matcher block = Pattern.compile("```json\\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(Path.of("..", "docs", "scenario-file.md")));
        while (block.find()) {
            examples.add(block.group(1));
        }
        assertThat(examples).hasSize(3);
        for (String example : examples) {
            done(simulate(example));
        }
    }

    @ParameterizedTest(name = "{0} → {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "\"capacity_ah\": 2 | \"capacity_ah\": 0 | line 2, column 65: capacity is 0.0 Ah; expected more than 0 Ah",
                "\"r0_ohms\": 0.01 | \"r0_ohms\": -0.01 | line 2, column 79: R0 is -0.01 Ω; expected 0 Ω or more",
                "[1, 4.1] | [1, 3.1] | line 2, column 28: row 2 of the rest-voltage table is charge 1.0000, 3.1000 V",
                "\"charge\": 1 | \"charg\": 1 | line 3, column 60: a cell has no field \"charg\"; nearest: charge",
                "\"like\": \"A\" | \"like\": \"B\" | line 3, column 46: there is no cell \"B\"; nearest: A",
                "volts_at_most | volts_at_mst | line 5, column 78: there is no condition \"volts_at_mst\"; nearest: volts_at_most",
                "discharge_amps | discharge | line 5, column 43: a step has no field \"discharge\"",
                "\"charge\": 1} | \"charge\": \"full\"} | line 3, column 61: charge is a text; expected a number",
                "\"sample_seconds\": 60, | \"sample_seconds\": 60 | line 5, column 3: not JSON",
                "{\"volts_at_most\": 3.55} | {} | line 5, column 61: step \"load\" has no end condition",
                "\"volts_at_most\": 3.55 | \"amps_at_most\": 1 | can never end",
            })
    void tellsAFaultWithItsPlace(String was, String is, String message) throws IOException {
        assertThat(SCENARIO).contains(was);
        refused(simulate(SCENARIO.replace(was, is)), "scenario.json", message);
    }

    @Test
    void tellsThePlaceOnceAndNothingOfTheParser() throws IOException {
        Shell.Result text = simulate(SCENARIO.replace("\"capacity_ah\": 2", "\"capacity_ah\": \"2\""));
        refused(text, "scenario.json line 2, column 65: capacity_ah is a text; expected a number");
        assertThat(text.err()).containsOnlyOnce("line 2");
        Shell.Result word = simulate(SCENARIO.replace("\"capacity_ah\": 2", "\"capacity_ah\": NaN"));
        refused(word, "not JSON");
        assertThat(word.err()).doesNotContain("JsonReadFeature", "enable");
    }

    @Test
    void tellsTheFaultsOfAllCellsAndStepsAtOnce() throws IOException {
        Shell.Result result = simulate(SCENARIO.replace("\"r0_ohms\": 0.01", "\"r0_ohms\": -1")
                .replace("\"until\": {\"volts_at_most\": 3.55}", "\"until\": {}"));
        assertThat(result.code()).isEqualTo(ExitCode.CANNOT);
        assertThat(result.err()).contains("R0 is -1.0 Ω", "has no end condition");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "[]", "{}", "3", "{\"packs\": []}", "null", "{\"packs\": 1, \"steps\": 2}"})
    void refusesWhatIsNoScenario(String text) throws IOException {
        refused(simulate(text), "scenario.json line 1");
    }

    @Test
    void saysWhyAStepCannotGoOn() throws IOException {
        refused(
                simulate(SCENARIO.replace("\"discharge_amps\": 10", "\"discharge_watts\": 5000")),
                "asks for 5000.000 W; the packs can give at most 420.250 W");
    }

    @Test
    void refusesAFileThatIsNotThere() {
        refused(
                new Shell(home)
                        .run("work", "simulate", home.resolve("none.json").toString()),
                "none.json");
        misused(new Shell(home).run("work", "simulate"), "FILE");
    }

    private Shell.Result simulate(String scenario, String... options) throws IOException {
        Path file = Files.writeString(home.resolve("scenario.json"), scenario);
        List<String> words = new ArrayList<>(List.of("work", "simulate", file.toString()));
        words.addAll(List.of(options));
        return new Shell(home).run(words.toArray(String[]::new));
    }
}
