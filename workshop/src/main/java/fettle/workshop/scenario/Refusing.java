package fettle.workshop.scenario;

import fettle.engine.units.Fault;
import fettle.engine.units.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Tells faults with the file, line and column they stand at. Collects those of independent parts, so that one reading tells
 * all. Not thread-safe.
 */
final class Refusing {
    /** Engine fields written under another key in a scenario. */
    private static final Map<String, String> WRITTEN = Map.of("ends", "until", "c1", "pairs", "c2", "pairs");

    /** How many near names a message offers. */
    static final int MOST_NEAR = 3;

    private final String file;
    private final List<Fault> found = new ArrayList<>();

    Refusing(String file) {
        this.file = file;
    }

    InputException at(Placed.Place place, String field, String sentence) {
        return new InputException(field, told(place, sentence));
    }

    /** A part whose faults are kept while the rest is read; {@code null} if it had any. */
    <T> List<T> part(Supplier<T> part) {
        try {
            return List.of(part.get());
        } catch (InputException e) {
            found.addAll(e.faults());
            return List.of();
        }
    }

    /** A part made by the engine, whose faults get the place of the field they name, or that of the whole. */
    <T> T engine(Placed.Fields fields, Supplier<T> part) {
        try {
            return part.get();
        } catch (InputException e) {
            throw new InputException(e.faults().stream()
                    .map(fault -> new Fault(fault.field(), told(placeOf(fields, fault.field()), fault.sentence())))
                    .toList());
        }
    }

    /** Refuses if any part had a fault. */
    void refuse() {
        if (!found.isEmpty()) {
            throw new InputException(found);
        }
    }

    private static Placed.Place placeOf(Placed.Fields fields, String field) {
        return fields.values().entrySet().stream()
                .filter(entry ->
                        entry.getKey().startsWith(field) || entry.getKey().equals(WRITTEN.get(field)))
                .map(entry -> entry.getValue().place())
                .findFirst()
                .orElse(fields.place());
    }

    private String told(Placed.Place place, String sentence) {
        if (sentence.startsWith(file + " line ")) {
            return sentence; // has its place already
        }
        return file + " line " + place.line() + ", column " + place.column() + ": " + sentence;
    }
}
