package fettle.workshop.sweep;

import fettle.engine.units.InputException;
import fettle.workshop.TypedLines;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A sweep typed by hand, one reading a line: pulse, current, and angle if known, e.g. {@code 1000 580mA} or
 * {@code 1,0 ms; 0,58 A; -24°}. It is then read like a file, so that swapped columns and units in doubt are found the same
 * way.
 */
public final class TypedSweep {
    /** What a typed sweep is called instead of a file's name. */
    public static final String NAME = "typed readings";

    private static final int PULSE = 0;
    private static final int CURRENT = 1;
    private static final int ANGLE = 2;
    private static final Pattern FIGURE = Pattern.compile("([+\\-]?[\\d.,]+)\\s*([A-Za-zµμ°]*)[;,]?");

    private TypedSweep() {}

    /**
     * Reads typed readings.
     *
     * @throws InputException with the number of every line that is no reading, or what a file would be refused for
     */
    public static SweepReading read(String typed, SweepChoices choices) {
        List<List<Matcher>> rows = TypedLines.read("points", typed, TypedSweep::figures);
        if (rows.isEmpty()) {
            throw new InputException("points", "no reading is typed. Type one a line, e.g. 1000 580mA.");
        }
        int columns = rows.get(0).size();
        if (rows.stream().anyMatch(row -> row.size() != columns)) {
            throw new InputException(
                    "points",
                    "some readings have an angle and some have none. Type it with all of them, or with none.");
        }
        String table = rows.stream()
                .map(row -> row.stream().map(figure -> figure.group(1)).collect(Collectors.joining(";")))
                .collect(Collectors.joining("\n", "", "\n"));
        return SweepReading.of(NAME, table.getBytes(StandardCharsets.UTF_8), stated(rows, choices));
    }

    private static SweepChoices stated(List<List<Matcher>> rows, SweepChoices choices) {
        String pulseUnit = unit(rows, PULSE, "pulse");
        String currentUnit = unit(rows, CURRENT, "current");
        return new SweepChoices(
                "1",
                "2",
                rows.get(0).size() > ANGLE ? "3" : "none",
                pulseUnit.isEmpty() ? choices.pulseUnit() : pulseUnit,
                currentUnit.isEmpty() ? choices.currentUnit() : currentUnit,
                choices.idleAmps(),
                choices.stallAmps());
    }

    /** The one unit a column is typed in; empty where none is. */
    private static String unit(List<List<Matcher>> rows, int column, String what) {
        Set<String> units =
                rows.stream().map(row -> row.get(column).group(2)).collect(Collectors.toCollection(LinkedHashSet::new));
        if (units.size() > 1) {
            throw new InputException(
                    "points",
                    what + " is typed in more than one unit: "
                            + units.stream()
                                    .map(unit -> unit.isEmpty() ? "none" : unit)
                                    .collect(Collectors.joining(", "))
                            + ". Use one for all of them.");
        }
        return units.iterator().next();
    }

    private static List<Matcher> figures(String line) {
        String spaced = line.strip().replace('−', '-').replaceAll("(?<=[\\d.,])\\s+(?=[A-Za-zµμ°])", "");
        List<Matcher> figures =
                Arrays.stream(spaced.split("[\\s;]+")).map(FIGURE::matcher).toList();
        if (figures.size() < 2 || figures.size() > 3 || !figures.stream().allMatch(Matcher::matches)) {
            throw new InputException(
                    "points",
                    "\"" + line.strip() + "\" is no reading; expected pulse and current, and an angle if known, e.g."
                            + " 1000 580mA.");
        }
        return figures;
    }
}
