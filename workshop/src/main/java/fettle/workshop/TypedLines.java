package fettle.workshop;

import fettle.engine.units.Fault;
import fettle.engine.units.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** A field that takes one item a line. */
public final class TypedLines {
    private TypedLines() {}

    /**
     * The items, blank lines passed over.
     *
     * @param field key of the field
     * @param typed what was typed
     * @param reader makes an item of a line, or refuses it
     * @throws InputException with the faults of every faulty line, each with the line's number
     */
    public static <T> List<T> read(String field, String typed, Function<String, T> reader) {
        List<T> items = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        int number = 0;
        for (String line : typed.lines().toList()) {
            number++;
            if (line.isBlank()) {
                continue;
            }
            try {
                items.add(reader.apply(line));
            } catch (InputException refused) {
                String where = "line " + number + ": ";
                refused.faults().forEach(fault -> faults.add(new Fault(field, where + fault.sentence())));
            }
        }
        if (!faults.isEmpty()) {
            throw new InputException(faults);
        }
        return items;
    }
}
