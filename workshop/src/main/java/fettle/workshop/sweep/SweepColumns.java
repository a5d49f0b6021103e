package fettle.workshop.sweep;

import fettle.book.intake.FigureTable;
import fettle.engine.control.sweep.ColumnDoubts;
import fettle.engine.units.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Finds the columns of a sweep by what is stated, by their headings, or by their figures. */
final class SweepColumns {
    private static final List<String> PULSE_NAMES = List.of("pulse", "pwm", "width", "command", "servo");
    private static final List<String> CURRENT_NAMES = List.of("current", "amps", "ma", "strom", "i");
    private static final List<String> ANGLE_NAMES = List.of("angle", "deflection", "deg", "position");

    private final FigureTable table;

    SweepColumns(FigureTable table) {
        this.table = table;
    }

    int pulse(String stated) {
        return stated.isBlank() ? named(PULSE_NAMES).orElseGet(this::pulseByFigures) : stated("pulse", stated);
    }

    int current(String stated, int pulse) {
        return stated.isBlank()
                ? named(CURRENT_NAMES).orElseGet(() -> currentByFigures(pulse))
                : stated("current", stated);
    }

    OptionalInt angle(String stated) {
        if (stated.isBlank()) {
            return named(ANGLE_NAMES).map(OptionalInt::of).orElse(OptionalInt.empty());
        }
        return stated.equalsIgnoreCase("none") ? OptionalInt.empty() : OptionalInt.of(stated("angle", stated));
    }

    String called(int column) {
        String name = table.names().get(column);
        return name.isBlank() ? "column " + (column + 1) : "column " + (column + 1) + " (" + name + ")";
    }

    private Optional<Integer> named(List<String> words) {
        for (String word : words) {
            for (int at = 0; at < table.names().size(); at++) {
                String name = table.names().get(at).toLowerCase(Locale.ROOT);
                if (word.length() > 2 ? name.contains(word) : name.equals(word)) {
                    return Optional.of(at);
                }
            }
        }
        return Optional.empty();
    }

    private int pulseByFigures() {
        List<Integer> fitting = new ArrayList<>();
        for (int at = 0; at < table.names().size(); at++) {
            if (ColumnDoubts.pulses(table.column(at))) {
                fitting.add(at);
            }
        }
        if (fitting.size() == 1) {
            return fitting.get(0);
        }
        throw new InputException(
                "pulse",
                table.file() + ": which column holds the pulses? "
                        + (fitting.isEmpty() ? "None" : "More than one") + " runs between 500 and 2500 µs. "
                        + "Name one of " + choices() + ".");
    }

    private int currentByFigures(int pulse) {
        if (table.names().size() == 2) {
            return 1 - pulse;
        }
        throw new InputException(
                "current", table.file() + ": which column holds the current? Name one of " + choices() + ".");
    }

    private int stated(String field, String column) {
        for (int at = 0; at < table.names().size(); at++) {
            if (table.names().get(at).equalsIgnoreCase(column.strip())
                    || String.valueOf(at + 1).equals(column.strip())) {
                return at;
            }
        }
        throw new InputException(
                field, table.file() + " has no column \"" + column.strip() + "\"; there are " + choices() + ".");
    }

    private String choices() {
        return IntStream.range(0, table.names().size())
                .mapToObj(at -> table.names().get(at).isBlank()
                        ? String.valueOf(at + 1)
                        : table.names().get(at))
                .collect(Collectors.joining(", "));
    }
}
