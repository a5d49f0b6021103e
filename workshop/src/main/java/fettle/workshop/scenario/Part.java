package fettle.workshop.scenario;

import fettle.engine.units.InputException;
import fettle.workshop.spelling.Spelling;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Typed access to the fields of one object of a scenario. */
final class Part {
    private final Refusing refusing;
    private final String what;
    private final Placed.Fields fields;

    private Part(Refusing refusing, String what, Placed.Fields fields) {
        this.refusing = refusing;
        this.what = what;
        this.fields = fields;
    }

    /** An object that has no other keys than these. */
    static Part of(Refusing refusing, String what, Placed value, List<String> keys) {
        if (!(value instanceof Placed.Fields fields)) {
            throw refusing.at(value.place(), what, what + " is " + value.kind() + "; expected an object.");
        }
        fields.values().forEach((key, field) -> {
            if (!keys.contains(key)) {
                throw refusing.at(
                        field.place(),
                        key,
                        what + " has no field \"" + key + "\"; nearest: "
                                + String.join(", ", Spelling.nearest(key, keys, Refusing.MOST_NEAR)) + ".");
            }
        });
        return new Part(refusing, what, fields);
    }

    /** This object with what it lacks taken from another. */
    Part over(Part base) {
        Map<String, Placed> both = new LinkedHashMap<>(base.fields.values());
        both.putAll(fields.values());
        return new Part(refusing, what, new Placed.Fields(both, fields.place()));
    }

    Placed.Fields fields() {
        return fields;
    }

    boolean has(String key) {
        return fields.values().containsKey(key);
    }

    Optional<Placed> value(String key) {
        return Optional.ofNullable(fields.values().get(key));
    }

    Placed wanted(String key) {
        return value(key).orElseThrow(() -> refused(key, what + " has no \"" + key + "\". Give it."));
    }

    double figure(String key) {
        return figure(key, wanted(key));
    }

    double figure(String key, double unlessGiven) {
        return optional(key).orElse(unlessGiven);
    }

    OptionalDouble optional(String key) {
        return value(key).map(value -> OptionalDouble.of(figure(key, value))).orElseGet(OptionalDouble::empty);
    }

    private double figure(String key, Placed value) {
        if (value instanceof Placed.Figure figure) {
            return figure.value();
        }
        throw refusing.at(value.place(), key, key + " is " + value.kind() + "; expected a number.");
    }

    int count(String key, int unlessGiven, int most) {
        double figure = figure(key, unlessGiven);
        if (figure < 1 || figure > most || figure > Math.floor(figure)) {
            throw refused(key, key + " is " + figure + "; expected a whole number from 1 to " + most + ".");
        }
        return (int) figure;
    }

    Optional<String> text(String key) {
        return value(key).map(value -> {
            if (value instanceof Placed.Text text) {
                return text.value();
            }
            throw refusing.at(value.place(), key, key + " is " + value.kind() + "; expected a text.");
        });
    }

    /** Items of a list; none if it is not given. */
    List<Placed> items(String key) {
        return value(key).map(value -> items(refusing, key, value)).orElseGet(List::of);
    }

    static List<Placed> items(Refusing refusing, String what, Placed value) {
        if (value instanceof Placed.Items items) {
            return items.values();
        }
        throw refusing.at(value.place(), what, what + " is " + value.kind() + "; expected a list.");
    }

    /** Columns of a table given as rows of numbers. */
    static double[][] columns(Refusing refusing, String what, Placed table, int width) {
        List<Placed> rows = items(refusing, what, table);
        double[][] columns = new double[width][rows.size()];
        for (int row = 0; row < rows.size(); row++) {
            List<Placed> cells = items(refusing, "row " + (row + 1) + " of " + what, rows.get(row));
            if (cells.size() != width) {
                throw refusing.at(
                        rows.get(row).place(),
                        what,
                        "row " + (row + 1) + " of " + what + " has " + cells.size() + " figures; expected " + width
                                + ".");
            }
            for (int column = 0; column < width; column++) {
                if (!(cells.get(column) instanceof Placed.Figure figure)) {
                    throw refusing.at(
                            cells.get(column).place(),
                            what,
                            "row " + (row + 1) + " of " + what + " holds "
                                    + cells.get(column).kind() + "; expected a number.");
                }
                columns[column][row] = figure.value();
            }
        }
        return columns;
    }

    /** Parts of a list or an object, each read on its own so that faults of all are told. */
    <T> List<T> each(List<Placed> items, Function<Placed, T> reader) {
        List<T> read = new ArrayList<>();
        items.forEach(item -> read.addAll(refusing.part(() -> reader.apply(item))));
        return read;
    }

    InputException refused(String key, String sentence) {
        Placed.Place place = value(key).map(Placed::place).orElse(fields.place());
        return refusing.at(place, key, sentence);
    }
}
