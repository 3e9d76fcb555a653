package io.github.formulationmath.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import io.github.formulationmath.record.BenchEntry;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** JSON text to maps, lists and texts, within limits that keep the memory bounded; {@link JsonWriter} is the way back. */
final class JsonText {

    static final int MAX_DEPTH = 32;
    private static final int MAX_NAME = 100;

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxDocumentLength(Written.MAX_CHARACTERS)
                    .maxNestingDepth(MAX_DEPTH)
                    .maxStringLength(2 * BenchEntry.LONGEST_TEXT)
                    .maxNameLength(MAX_NAME)
                    .maxNumberLength(MAX_NAME)
                    .build())
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
            .disable(StreamReadFeature.AUTO_CLOSE_SOURCE)
            .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
            .disable(JsonFactory.Feature.CANONICALIZE_FIELD_NAMES)
            .build();

    private int values;

    private JsonText() {}

    /** The one value of a document; anything but white space after it is refused. */
    static Object read(Reader reader) throws IOException {
        try (JsonParser parser = FACTORY.createParser(reader)) {
            JsonToken first = parser.nextToken();
            if (first == null) {
                throw new RecordFormatException("", "it is empty: a JSON object is expected");
            }
            Object value = new JsonText().value(parser, first);
            if (parser.nextToken() != null) {
                throw wrong(parser, "something follows after the end of the object");
            }
            return value;
        } catch (JsonProcessingException e) {
            throw new RecordFormatException(
                    "", "it is not JSON that can be read" + place(e.getLocation()) + ": " + e.getOriginalMessage(), e);
        }
    }

    /** A limit that was passed has no place. */
    private static String place(@Nullable JsonLocation location) {
        return location == null ? "" : " (line " + location.getLineNr() + ", column " + location.getColumnNr() + ")";
    }

    /** No deeper than the parser's limit on nesting. */
    private Object value(JsonParser parser, JsonToken token) throws IOException {
        if (++values > JsonWriter.MAX_VALUES) {
            throw wrong(parser, "there are more than " + JsonWriter.MAX_VALUES + " values: this is no batch record");
        }
        return switch (token) {
            case VALUE_STRING -> parser.getText();
            case START_OBJECT -> object(parser);
            case START_ARRAY -> array(parser);
            default ->
                throw wrong(
                        parser,
                        "a text, an object or a list is expected; numbers are written as texts, like \"12.5\", so that"
                                + " no digit is lost, and what is not known is left out");
        };
    }

    private Map<String, Object> object(JsonParser parser) throws IOException {
        Map<String, Object> map = new LinkedHashMap<>();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String name = parser.currentName();
            map.put(name, value(parser, parser.nextToken()));
        }
        return map;
    }

    private List<Object> array(JsonParser parser) throws IOException {
        List<Object> list = new ArrayList<>();
        for (JsonToken token = parser.nextToken(); token != JsonToken.END_ARRAY; token = parser.nextToken()) {
            list.add(value(parser, token));
        }
        return list;
    }

    private static RecordFormatException wrong(JsonParser parser, String reason) {
        return new RecordFormatException(
                parser.getParsingContext().pathAsPointer().toString(), reason + place(parser.currentLocation()));
    }
}
