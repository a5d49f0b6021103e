package fettle.workshop.scenario;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads JSON and keeps the place of every value. */
final class PlacedJson {
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private final JsonParser parser;

    private PlacedJson(JsonParser parser) {
        this.parser = parser;
    }

    /** The one value of a text; faults of JSON itself are refused with their place. */
    static Placed parse(Refusing refusing, String text) {
        try (JsonParser parser = FACTORY.createParser(text)) {
            PlacedJson reading = new PlacedJson(parser);
            parser.nextToken();
            if (parser.currentToken() == null) {
                throw refusing.at(new Placed.Place(1, 1), "json", "the file is empty; expected a JSON object.");
            }
            Placed value = reading.value();
            if (parser.nextToken() != null) {
                throw refusing.at(reading.place(), "json", "something follows the end of the object. Remove it.");
            }
            return value;
        } catch (JsonProcessingException e) {
            throw refusing.at(
                    placeOrBeginning(e.getLocation()), "json", "not JSON: " + plain(e.getOriginalMessage()) + ".");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What the parser says, without its advice on how to set the parser. */
    private static String plain(String message) {
        return message.replaceAll(": enable .*", "");
    }

    private Placed value() throws IOException {
        Placed.Place place = place();
        return switch (parser.currentToken()) {
            case START_OBJECT -> new Placed.Fields(fields(), place);
            case START_ARRAY -> new Placed.Items(items(), place);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Placed.Figure(parser.getDoubleValue(), place);
            case VALUE_STRING -> new Placed.Text(parser.getText(), place);
            default -> new Placed.Word(parser.getText(), place);
        };
    }

    private Map<String, Placed> fields() throws IOException {
        Map<String, Placed> fields = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            parser.nextToken();
            fields.put(name, value());
        }
        return fields;
    }

    private List<Placed> items() throws IOException {
        List<Placed> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(value());
        }
        return items;
    }

    private Placed.Place place() {
        return place(parser.currentTokenLocation());
    }

    /** Refusals of what is too long or too deep come without a place. */
    private static Placed.Place placeOrBeginning(@Nullable JsonLocation location) {
        return location == null ? new Placed.Place(1, 1) : place(location);
    }

    private static Placed.Place place(JsonLocation location) {
        return new Placed.Place(location.getLineNr(), location.getColumnNr());
    }
}
