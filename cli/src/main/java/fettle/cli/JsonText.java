package fettle.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;

/** Prints the workshop's records as JSON. */
final class JsonText {
    private static final ObjectMapper MAPPER = new ObjectMapper()
            .registerModule(new JavaTimeModule())
            .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
            .enable(SerializationFeature.INDENT_OUTPUT);

    private JsonText() {}

    static String of(Object shape) {
        try {
            return MAPPER.writeValueAsString(shape);
        } catch (JsonProcessingException fault) {
            throw new IllegalStateException("a record has no JSON shape", fault);
        }
    }
}
