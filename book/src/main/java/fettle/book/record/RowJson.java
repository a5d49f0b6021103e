package fettle.book.record;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Rows as JSON text and back without loss: whole numbers stay whole, reals keep every digit. */
public final class RowJson {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private RowJson() {}

    /** The same row always gives the same text. */
    public static String write(Row row) {
        return node(row).toString();
    }

    public static Row read(String json) {
        try {
            JsonNode node = MAPPER.readTree(json);
            if (!node.isObject()) {
                throw new UnreadableRowException("a journal entry's state is not an object");
            }
            return row(node);
        } catch (JsonProcessingException damaged) {
            throw new UnreadableRowException("a journal entry's state is not JSON");
        }
    }

    private static ObjectNode node(Row row) {
        ObjectNode node = MAPPER.createObjectNode();
        row.values().forEach((column, value) -> put(node, column, value));
        row.parts().forEach((table, rows) -> {
            ArrayNode list = node.putArray(table);
            rows.forEach(part -> list.add(node(part)));
        });
        return node;
    }

    private static void put(ObjectNode node, String column, @Nullable Object value) {
        if (value instanceof String text) {
            node.put(column, text);
        } else if (value instanceof Long whole) {
            node.put(column, whole);
        } else if (value instanceof Double real) {
            node.put(column, real);
        } else {
            node.putNull(column);
        }
    }

    private static Row row(JsonNode node) {
        Row row = Row.empty();
        for (Map.Entry<String, JsonNode> field : node.properties()) {
            if (field.getValue().isArray()) {
                List<Row> parts = new ArrayList<>();
                field.getValue().forEach(part -> parts.add(row(part)));
                row = row.withParts(field.getKey(), parts);
            } else {
                row = row.withValue(field.getKey(), value(field.getValue()));
            }
        }
        return row;
    }

    private static @Nullable Object value(JsonNode node) {
        if (node.isIntegralNumber()) {
            return node.longValue();
        }
        if (node.isNumber()) {
            return node.doubleValue();
        }
        return node.isNull() ? null : node.asText();
    }
}
