package fettle.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.desk.frame.LineReading.Part;
import fettle.workshop.EntryPreview;
import fettle.workshop.EntryPreview.LineProblem;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

final class LineReadingTest {
    @Test
    void marksTheBadPartAtItsColumn() {
        LineReading reading = reading("P07 3.84 38,3 3.85", new LineProblem(10, "38,3", "is too much."));

        assertThat(reading.parts())
                .containsExactly(new Part("P07 3.84 ", false), new Part("38,3", true), new Part(" 3.85", false));
        assertThat(reading.problems()).containsExactly("column 10: is too much.");
    }

    @Test
    void marksPartsInTheirOrderWhateverTheOrderOfTheProblems() {
        LineReading reading =
                reading("x 3.84 y", new LineProblem(8, "y", "is odd."), new LineProblem(1, "x", "is not a pack."));

        assertThat(joined(reading)).isEqualTo("x 3.84 y");
        assertThat(reading.parts()).filteredOn(Part::bad).extracting(Part::text).containsExactly("x", "y");
    }

    @Test
    void marksTheEndOfALineThatStopsTooSoon() {
        LineReading reading = reading("P07", new LineProblem(4, "", "has no reading."));

        assertThat(reading.parts()).containsExactly(new Part("P07", false), new Part(" ", true));
    }

    @Test
    void losesNothingWhereProblemsOverlap() {
        LineReading reading = reading(
                "P07 3.84 3.83",
                new LineProblem(5, "3.84 3.83", "are two cells, not four."),
                new LineProblem(10, "3.83", "is odd."));

        assertThat(joined(reading)).isEqualTo("P07 3.84 3.83");
        assertThat(reading.problems()).hasSize(2);
    }

    private static LineReading reading(String line, LineProblem... problems) {
        return LineReading.of(new EntryPreview(line, null, List.of(), List.of(problems), List.of(), List.of()));
    }

    private static String joined(LineReading reading) {
        return reading.parts().stream().map(Part::text).collect(Collectors.joining());
    }
}
