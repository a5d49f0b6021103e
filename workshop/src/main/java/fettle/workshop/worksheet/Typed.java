package fettle.workshop.worksheet;

import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import fettle.workshop.TypedFields;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** What was typed into a worksheet, each field's usual value where nothing was. Not thread-safe. */
final class Typed {
    /** The worksheet's field for each field of the engine that has another name. */
    private static final Map<String, String> FIELD_OF = Map.ofEntries(
            Map.entry("lead", "leads"),
            Map.entry("ambient", "air"),
            Map.entry("charge_amps", "packs"),
            Map.entry("hinge", "aft"),
            Map.entry("armNeutral", "arm-direction"),
            Map.entry("hornNeutral", "horn-direction"),
            Map.entry("slope", "turn"),
            Map.entry("pulse", "high"),
            Map.entry("pulses", "high"),
            Map.entry("servoAngle", "high"),
            Map.entry("surfaceAngle", "up"),
            Map.entry("jointPlay", "play"),
            Map.entry("gearPlay", "play"),
            Map.entry("chordRatio", "share"),
            Map.entry("plate", "height"),
            Map.entry("armHoles", "arms"),
            Map.entry("hornHoles", "horns"),
            Map.entry("armNeutrals", "directions"),
            Map.entry("servoTravel", "travel"),
            Map.entry("throws", "up"),
            Map.entry("halfSpan", "servo-span"),
            Map.entry("fastestFrame", "servo-frame"),
            Map.entry("fullHours", "full"),
            Map.entry("quarterHours", "quarter"),
            Map.entry("stop", "level"));

    private final Map<String, String> words;
    private final List<WorksheetField> fields;
    private final TypedFields reader = new TypedFields();

    Typed(Map<String, String> words, List<WorksheetField> fields) {
        this.words = words;
        this.fields = fields;
    }

    /** Everything typed, and one word more. */
    Map<String, String> with(String key, String word) {
        Map<String, String> more = new HashMap<>(words);
        more.put(key, word);
        return more;
    }

    String word(String key) {
        String typed = words.getOrDefault(key, "").strip();
        return typed.isEmpty() ? field(key).usual() : typed;
    }

    /** A quantity that must be known; harmless instead where it cannot be read. */
    double quantity(String key, Measure measure, TradeUnit bare, double instead) {
        return reader.needed(key, label(key), word(key), measure, bare, instead);
    }

    /** A quantity that may be left out. */
    OptionalDouble optional(String key, Measure measure, TradeUnit bare) {
        Double read = reader.optional(key, label(key), word(key), measure, bare);
        return read == null ? OptionalDouble.empty() : OptionalDouble.of(read);
    }

    <T> T read(String key, Supplier<T> how, T instead) {
        return reader.read(key, how, instead);
    }

    /** Makes the answer, or refuses with every fault so far and its own. */
    <T> T make(Supplier<T> maker) {
        return reader.make(maker, FIELD_OF);
    }

    /** The same where a field of the engine stands for another field here. */
    <T> T make(Supplier<T> maker, String engineField, String field) {
        Map<String, String> more = new HashMap<>(FIELD_OF);
        more.put(engineField, field);
        return reader.make(maker, more);
    }

    private String label(String key) {
        return field(key).label();
    }

    private WorksheetField field(String key) {
        return fields.stream()
                .filter(field -> field.key().equals(key))
                .findFirst()
                .orElseThrow();
    }
}
