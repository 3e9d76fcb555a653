package io.github.formulationmath.json;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** An object on its way into a document: texts, lists and further objects under the names of its fields, in their order. */
final class Written {

    /** The longest document that is read, and so the longest that is written. */
    static final int MAX_CHARACTERS = 32 << 20;

    private final Map<String, Object> fields = new LinkedHashMap<>();

    private Written() {}

    /** An object without fields yet. */
    static Written empty() {
        return new Written();
    }

    static Written of(String name, Object value) {
        return new Written().with(name, value);
    }

    Written with(String name, Object value) {
        fields.put(name, value);
        return this;
    }

    /** A field that is left out if there is nothing to say. */
    <T> Written with(String name, Optional<T> value, Function<? super T, ?> writer) {
        value.ifPresent(known -> with(name, writer.apply(known)));
        return this;
    }

    <T> Written with(String name, List<T> items, Function<? super T, ?> writer) {
        return with(name, items.stream().map(writer).toList());
    }

    Map<String, Object> fields() {
        return Collections.unmodifiableMap(fields);
    }
}
