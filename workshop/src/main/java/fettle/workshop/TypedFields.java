package fettle.workshop;

import fettle.engine.units.Fault;
import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Reads the fields of one form and keeps every fault at its field. Not thread-safe.
 *
 * <p>A field that cannot be read is replaced by a harmless value, so that the other fields are still checked; the
 * item made from it is never handed out, because {@link #make} refuses first.
 */
public final class TypedFields {
    private final List<Fault> found = new ArrayList<>();

    /** A quantity that must be stated. */
    public double needed(String field, String what, String typed, Measure measure, TradeUnit bare, double instead) {
        if (typed.isBlank()) {
            found.add(new Fault(field, what + " is not stated. Write it in " + measure.choices() + "."));
            return instead;
        }
        return read(field, () -> QuantityText.si(field, what, typed, measure, bare), instead);
    }

    /** A quantity that may be left empty. */
    @Nullable
    public Double optional(String field, String what, String typed, Measure measure, TradeUnit bare) {
        return this.<@Nullable Double>read(field, () -> QuantityText.siOrNull(field, what, typed, measure, bare), null);
    }

    /** One of a few words, in any case. */
    <E extends Enum<E>> E choice(String field, String what, String typed, E[] all, Function<E, String> label) {
        String key = typed.strip().toLowerCase(Locale.ROOT);
        for (E candidate : all) {
            if (label.apply(candidate).equals(key)) {
                return candidate;
            }
        }
        String choices = Arrays.stream(all).map(label).collect(Collectors.joining(", "));
        found.add(new Fault(field, what + " is \"" + typed.strip() + "\"; expected one of " + choices + "."));
        return all[0];
    }

    /** Whatever a reader makes of a field; its faults are kept at this field. */
    public <T extends @Nullable Object> T read(String field, Supplier<T> reader, T instead) {
        try {
            return reader.get();
        } catch (InputException refused) {
            refused.faults().forEach(fault -> found.add(new Fault(field, fault.sentence())));
            return instead;
        }
    }

    public void fault(String field, String sentence) {
        found.add(new Fault(field, sentence));
    }

    /**
     * Makes the item, or refuses with every fault of the fields and of the item.
     *
     * @param fieldOf the form's field for each field of the item that has another name
     */
    public <T> T make(Supplier<T> maker, Map<String, String> fieldOf) {
        T made = null;
        try {
            made = maker.get();
        } catch (InputException refused) {
            refused.faults().forEach(fault -> {
                String field = fault.field().replaceFirst("\\.\\d+$", "");
                found.add(new Fault(fieldOf.getOrDefault(field, field), fault.sentence()));
            });
        }
        if (made == null || !found.isEmpty()) {
            throw new InputException(found);
        }
        return made;
    }

    /** An optional quantity as typed; empty if it is not stated. */
    static String written(@Nullable Double si, Measure measure) {
        return si == null ? "" : QuantityText.write(si, measure);
    }
}
