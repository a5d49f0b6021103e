package fettle.workshop;

import fettle.engine.units.Fault;
import fettle.engine.units.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** A field that takes one item a line. */
public final class TypedLines {
    /** Most characters a line can have; no item needs more, and what takes lines apart is not to be kept busy by one. */
    private static final int LONGEST = 1_000;

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
            if (line.length() > LONGEST) {
                faults.add(new Fault(
                        field,
                        "line " + number + ": it has " + line.length() + " characters; at most " + LONGEST
                                + " are read. Type one item a line."));
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
