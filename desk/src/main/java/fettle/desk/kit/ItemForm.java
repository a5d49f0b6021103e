package fettle.desk.kit;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import fettle.engine.units.Faults;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * How an item is typed: its fields, and the way from typed words to the item and back through the workshop's form.
 *
 * @param fields in the order they are asked
 * @param read typed words by field to the item; refuses with a fault per field
 * @param write the item as a person would type it
 */
public record ItemForm<T>(
        List<Field> fields, Function<Map<String, String>, T> read, Function<T, Map<String, String>> write) {
    private static final ObjectMapper RECORDS = new ObjectMapper();
    private static final TypeReference<Map<String, String>> WORDS = new TypeReference<>() {};

    /** A form over one of the workshop's records of strings, whose component names are the field keys. */
    static <F, T> ItemForm<T> over(Class<F> type, List<Field> fields, Function<F, T> toItem, Function<T, F> ofItem) {
        return new ItemForm<>(
                fields,
                words -> toItem.apply(RECORDS.convertValue(complete(words, fields), type)),
                item -> RECORDS.convertValue(ofItem.apply(item), WORDS));
    }

    private static Map<String, String> complete(Map<String, String> words, List<Field> fields) {
        Map<String, String> complete = new HashMap<>();
        fields.forEach(field -> complete.put(field.key(), words.getOrDefault(field.key(), "")));
        Faults faults = new Faults();
        words.keySet().stream()
                .filter(key -> !complete.containsKey(key))
                .forEach(key -> faults.add(
                        key,
                        "field \"" + key + "\" is not known; expected "
                                + String.join(
                                        ", ", fields.stream().map(Field::key).toList()) + "."));
        faults.refuse();
        return complete;
    }
}
