package fettle.desk.kit;

import fettle.engine.units.Fault;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A form with what was typed in it and what is wrong with it.
 *
 * @param action where it is sent
 * @param button what the button says
 * @param lines its fields
 * @param faults sentences that belong to no field
 * @param key the kind of kit
 * @param name the item being edited; {@code null} for a new one
 * @param retired whether that item is retired
 * @param home where one who leaves it goes
 */
public record FormPage(
        String action,
        String button,
        List<Line> lines,
        List<String> faults,
        String key,
        @Nullable String name,
        boolean retired,
        String home) {

    /**
     * A field with what stands in it and what is wrong there.
     *
     * @param known words of the book to choose from
     */
    public record Line(Field field, String value, List<String> faults, List<String> known) {
        /** Whether a choice is among those ticked. */
        public boolean ticked(String choice) {
            return Arrays.stream(value.split(",")).map(String::strip).anyMatch(choice::equalsIgnoreCase);
        }
    }

    /** True if anything is wrong. */
    public boolean refused() {
        return !faults.isEmpty()
                || lines.stream().anyMatch(line -> !line.faults().isEmpty());
    }

    /**
     * The fields with what stands in them and what is wrong there.
     *
     * @param known words to choose from, by a field's key
     */
    public static List<Line> lines(
            List<Field> fields, Map<String, String> words, List<Fault> faults, Function<String, List<String>> known) {
        return fields.stream()
                .map(field -> new Line(
                        field,
                        words.getOrDefault(field.key(), field.usual()),
                        at(field, faults),
                        known.apply(field.key())))
                .toList();
    }

    /** What is wrong at none of the fields. */
    public static List<String> atNoField(List<Field> fields, List<Fault> faults) {
        return faults.stream()
                .filter(fault -> fields.stream().noneMatch(field -> belongs(fault, field)))
                .map(Fault::sentence)
                .toList();
    }

    private static List<String> at(Field field, List<Fault> faults) {
        return faults.stream()
                .filter(fault -> belongs(fault, field))
                .map(Fault::sentence)
                .toList();
    }

    /** A fault at {@code ports.2} belongs to the field {@code ports}. */
    private static boolean belongs(Fault fault, Field field) {
        return fault.field().equals(field.key()) || fault.field().startsWith(field.key() + ".");
    }
}
