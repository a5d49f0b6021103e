package fettle.documents;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.engine.cell.Chemistry;
import fettle.engine.rule.Limits;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.RuleSet;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The documents say what the project is: their links lead somewhere, their tables are those of the program. */
final class DocumentsTest {
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");
    private static final Pattern HEADING = Pattern.compile("(?m)^#+ (.+)$");
    private static final Pattern VERSION = Pattern.compile("\\d+(\\.\\d+)+");

    /** Rows of the rules table in interpretation.md and what they show. */
    private static final Map<String, List<Quantity>> RULE_ROWS = Map.of(
            "charge limit, V per cell", List.of(Quantity.CHARGE_LIMIT),
            "storage band, V", List.of(Quantity.STORAGE_LOW, Quantity.STORAGE_HIGH),
            "rest minimum, V", List.of(Quantity.REST_MINIMUM),
            "under-load minimum, V", List.of(Quantity.LOAD_MINIMUM),
            "charging, °C", List.of(Quantity.CHARGE_COLDEST, Quantity.CHARGE_WARMEST),
            "highest in use, °C", List.of(Quantity.TEMPERATURE_LIMIT),
            "longest kept full", List.of(Quantity.STORAGE_TIME));

    @Test
    void everyLinkBetweenDocumentsLeadsSomewhere() {
        List<String> broken = new ArrayList<>();
        int followed = 0;
        for (Path document : Documents.all()) {
            Matcher link = LINK.matcher(Documents.text(document));
            while (link.find()) {
                if (!link.group(1).startsWith("http")) {
                    followed++;
                    if (!leadsSomewhere(document, link.group(1))) {
                        broken.add(document.getFileName() + " → " + link.group(1));
                    }
                }
            }
        }
        assertThat(broken).isEmpty();
        assertThat(followed).isGreaterThan(15);
    }

    @Test
    void theRulesInTheDocumentAreThoseOfTheProgram() {
        int compared = 0;
        for (List<String> row : Documents.rows("docs/interpretation.md", 1 + Chemistry.values().length)) {
            List<Quantity> shown = RULE_ROWS.get(row.get(0));
            if (shown != null) {
                for (Chemistry chemistry : Chemistry.values()) {
                    assertThat(row.get(1 + chemistry.ordinal()))
                            .as("%s of %s", row.get(0), chemistry.label())
                            .isEqualTo(printed(chemistry, shown));
                    compared++;
                }
            }
        }
        assertThat(compared).isEqualTo(RULE_ROWS.size() * Chemistry.values().length);
    }

    @Test
    void theVersionsOfTheLibrariesAreThoseOfTheBuild() {
        String build = Documents.text(Documents.home().resolve("pom.xml"));
        List<String> versions = Documents.rows("docs/ARCHITECTURE.md", 4).stream()
                .flatMap(row -> VERSION.matcher(row.get(1)).results())
                .map(found -> found.group())
                .toList();
        assertThat(versions)
                .hasSizeGreaterThan(12)
                .allSatisfy(version -> assertThat(build).contains(">" + version + "<"));
    }

    private static boolean leadsSomewhere(Path document, String link) {
        String[] parts = link.split("#", 2);
        Path target = parts[0].isEmpty() ? document : document.resolveSibling(parts[0]);
        return Files.exists(target) && (parts.length < 2 || headings(target).contains(parts[1]));
    }

    /** The anchors a page of documents makes of its headings: lower case, hyphens for spaces, other signs left out. */
    private static List<String> headings(Path document) {
        return HEADING.matcher(Documents.text(document))
                .results()
                .map(found -> found.group(1)
                        .toLowerCase(Locale.ROOT)
                        .replaceAll("[^\\p{L}\\p{N} _-]", "")
                        .replace(' ', '-'))
                .toList();
    }

    private static String printed(Chemistry chemistry, List<Quantity> quantities) {
        Limits limits = RuleSet.of(List.of()).limitsFor(chemistry, null, List.of());
        return quantities.stream()
                .map(quantity -> limits.rule(quantity).print())
                .map(text -> quantities.get(0) == Quantity.STORAGE_TIME ? text : text.split(" ")[0])
                .collect(Collectors.joining("–"));
    }
}
