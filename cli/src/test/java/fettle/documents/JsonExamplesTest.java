package fettle.documents;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fettle.desk.json.Shapes;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Each example in json.md has the fields of the shape it is headed with, all the way down, as OpenAPI states them. */
final class JsonExamplesTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Pattern EXAMPLE = Pattern.compile("(?s)### (\\w+)\\n(?:(?!###).)*?```json\\n(.*?)```");

    private final JsonNode document = openApi();
    private int compared;

    @Test
    void everyExampleHasTheDocumentedFields() throws Exception {
        String text = Documents.text(Documents.home().resolve("docs/json.md"));
        int examples = 0;
        for (MatchResult example : EXAMPLE.matcher(text).results().toList()) {
            JsonNode schema = document.at("/components/schemas/" + example.group(1));
            assertThat(schema.isMissingNode())
                    .as("shape %s is not in the OpenAPI document", example.group(1))
                    .isFalse();
            compare(JSON.readTree(example.group(2)), schema, example.group(1));
            examples++;
        }
        assertThat(examples).isGreaterThan(10);
        assertThat(compared).isGreaterThan(80);
    }

    private void compare(JsonNode value, JsonNode schema, String where) {
        compared++;
        JsonNode shape = schema.has("allOf") ? schema.get("allOf").get(0) : schema;
        JsonNode resolved =
                shape.has("$ref") ? document.at(shape.get("$ref").asText().substring(1)) : shape;
        if (value.isObject()) {
            assertThat(names(value)).as(where).isEqualTo(names(resolved.get("properties")));
            value.properties()
                    .forEach(field -> compare(
                            field.getValue(),
                            resolved.get("properties").get(field.getKey()),
                            where + "." + field.getKey()));
        } else if (value.isArray()) {
            value.forEach(item -> compare(item, resolved.get("items"), where + "[]"));
        } else if (value.isTextual() && resolved.has("enum")) {
            assertThat(resolved.get("enum")).as(where).contains(value);
        }
    }

    private static JsonNode openApi() {
        try (InputStream stream = Shapes.class.getResourceAsStream("/fettle/desk/api/openapi.json")) {
            return JSON.readTree(stream);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static TreeSet<String> names(JsonNode object) {
        TreeSet<String> names = new TreeSet<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }
}
