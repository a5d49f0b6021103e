package fettle.book.intake;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import fettle.engine.units.InputException;

/** Mappings as text and back, for keeping beside the traces read by them. */
public final class MappingText {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private MappingText() {}

    /** The same mapping always gives the same text. */
    public static String write(Mapping mapping) {
        try {
            return MAPPER.writeValueAsString(mapping);
        } catch (JsonProcessingException never) {
            throw new IllegalStateException("a mapping is plain text and numbers", never);
        }
    }

    /** @throws InputException if the text is no mapping */
    public static Mapping read(String text) {
        try {
            return MAPPER.readValue(text, Mapping.class);
        } catch (JsonProcessingException damaged) {
            throw new InputException("mapping", "the way this log is read is damaged. Run: book verify.");
        }
    }
}
