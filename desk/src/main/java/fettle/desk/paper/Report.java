package fettle.desk.paper;

import java.util.ArrayList;
import java.util.List;

/**
 * A paper of text and tables.
 *
 * @param title its heading
 * @param lead what it is, in a sentence or two
 * @param sections its parts in order
 * @param foot stands at the foot of every page
 */
public record Report(String title, String lead, List<Section> sections, String foot) {
    public Report {
        sections = List.copyOf(sections);
    }

    /**
     * A part under a heading: paragraphs, then named values, then a table; each may be empty.
     *
     * @param table rows of cells, the first row its heading
     */
    public record Section(String heading, List<String> paragraphs, List<Fact> facts, List<List<String>> table) {
        public Section {
            paragraphs = List.copyOf(paragraphs);
            facts = List.copyOf(facts);
            table = List.copyOf(table);
        }

        public static Section ofText(String heading, List<String> paragraphs) {
            return new Section(heading, paragraphs, List.of(), List.of());
        }

        public static Section ofFacts(String heading, List<String> paragraphs, List<Fact> facts) {
            return new Section(heading, paragraphs, facts, List.of());
        }

        /** A table under its heading row. */
        public static Section ofTable(String heading, List<String> columns, List<List<String>> rows) {
            List<List<String>> table = new ArrayList<>();
            table.add(columns);
            table.addAll(rows);
            return new Section(heading, List.of(), List.of(), table);
        }

        /** True if nothing stands under the heading. */
        public boolean isEmpty() {
            return paragraphs.isEmpty() && facts.isEmpty() && table.size() < 2;
        }
    }

    /** A named value, with what is said small beside it; may be empty. */
    public record Fact(String name, String value, String beside) {}
}
