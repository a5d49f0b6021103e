package fettle.engine.health;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.health.filter.FilterTable;
import fettle.engine.health.forecast.ForecastTables;
import fettle.engine.health.identification.IdentificationTables;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The tables of health in docs/accuracy.md are what the computation gives. To write them anew:
 * {@code mvn -pl engine test -Dtest=HealthAccuracyTest -DargLine=-Dfettle.accuracy=write}.
 */
class HealthAccuracyTest {
    private static final Path DOCUMENT = Path.of("..", "docs", "accuracy.md");
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.(\\d+))?");

    @Test
    void documentSaysWhatTheComputationGives() throws IOException {
        String text = Files.readString(DOCUMENT);
        if ("write".equals(System.getProperty("fettle.accuracy"))) {
            for (Map.Entry<String, String> table : tables().entrySet()) {
                String old = between(text, table.getKey());
                text = text.replace(begin(table.getKey()) + old, begin(table.getKey()) + table.getValue());
            }
            Files.writeString(DOCUMENT, text);
        }
        for (Map.Entry<String, String> table : tables().entrySet()) {
            compare(table.getKey(), between(text, table.getKey()), table.getValue());
        }
    }

    private static Map<String, String> tables() {
        Map<String, String> tables = new LinkedHashMap<>();
        tables.put("pulses", IdentificationTables.pulses());
        tables.put("predictions", IdentificationTables.predictions());
        tables.put("temperature law", IdentificationTables.temperatureLaw());
        tables.put("charge filter", FilterTable.made());
        tables.put("forecast", ForecastTables.summary());
        tables.put("forecast at 80 %", ForecastTables.usualLimit());
        tables.put("use", ForecastTables.use());
        return tables;
    }

    private static String begin(String name) {
        return "<!-- made by HealthAccuracyTest: " + name + " -->\n";
    }

    private static String between(String text, String name) {
        int from = text.indexOf(begin(name));
        assertThat(from).as("place of the table '%s' in %s", name, DOCUMENT).isNotNegative();
        from += begin(name).length();
        int to = text.indexOf("<!-- end -->", from);
        assertThat(to).as("end of the table '%s'", name).isNotNegative();
        return text.substring(from, to);
    }

    /** The same words, and numbers alike within one of the last digit printed. */
    private static void compare(String name, String written, String computed) {
        assertThat(NUMBER.matcher(written).replaceAll("#"))
                .as(name)
                .isEqualTo(NUMBER.matcher(computed).replaceAll("#"));
        List<double[]> there = numbers(written);
        List<double[]> here = numbers(computed);
        assertThat(there).isNotEmpty();
        for (int i = 0; i < here.size(); i++) {
            assertThat(there.get(i)[0])
                    .as("%s, number %d", name, i + 1)
                    .isCloseTo(here.get(i)[0], within(1.01 * here.get(i)[1]));
        }
    }

    private static List<double[]> numbers(String text) {
        List<double[]> numbers = new ArrayList<>();
        Matcher matcher = NUMBER.matcher(text);
        while (matcher.find()) {
            int decimals = matcher.group(1) == null ? 0 : matcher.group(1).length();
            numbers.add(new double[] {Double.parseDouble(matcher.group()), Math.pow(10, -decimals)});
        }
        return numbers;
    }
}
