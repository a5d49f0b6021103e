package fettle.desk.api;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import fettle.desk.json.Shapes;
import fettle.engine.units.InputException;
import io.javalin.http.ContentType;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UnsupportedMediaTypeResponse;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Bodies and answers of the API. */
final class Json {
    private static final ObjectMapper BODIES = new ObjectMapper();
    private static final TypeReference<Map<String, String>> WORDS = new TypeReference<>() {};

    private Json() {}

    static void answer(Context ctx, Object record) {
        ctx.header("Cache-Control", "no-store");
        ctx.contentType(ContentType.APPLICATION_JSON).result(Shapes.write(record));
    }

    static void created(Context ctx, Object record) {
        ctx.status(HttpStatus.CREATED);
        answer(ctx, record);
    }

    static Map<String, String> body(Context ctx) {
        String type = Objects.requireNonNullElse(ctx.contentType(), "");
        if (!type.startsWith("application/json")) {
            throw new UnsupportedMediaTypeResponse("the body is \"" + type + "\"; expected application/json.");
        }
        try {
            Map<String, String> words = BODIES.readValue(ctx.body(), WORDS);
            if (words == null) {
                throw new InputException("", "the body is null; expected a JSON object of strings.");
            }
            return words;
        } catch (JsonProcessingException e) {
            throw new InputException("", "the body is not a JSON object of strings" + place(e.getLocation()) + ".");
        }
    }

    /** Refusals of what is too long or too deep come without a place. */
    private static String place(@Nullable JsonLocation location) {
        return location == null ? "" : " at line " + location.getLineNr() + ", column " + location.getColumnNr();
    }

    static String word(Map<String, String> body, String key) {
        return Objects.requireNonNullElse(body.get(key), "");
    }
}
