package io.github.formulationmath.json;

import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.function.Supplier;

/**
 * A place in a document of maps, lists and texts, read field by field; it remembers which fields were asked for, and says
 * where it is when something is wrong.
 */
final class Node {

    private final Object value;
    private final String pointer;
    private final List<String> unknown;

    private Node(Object value, String pointer, List<String> unknown) {
        this.value = value;
        this.pointer = pointer;
        this.unknown = unknown;
    }

    static Node root(Object document) {
        return new Node(document, "", new ArrayList<>());
    }

    List<String> unknownFields() {
        return Collections.unmodifiableList(unknown);
    }

    /** Reads an object; fields that the reader does not ask for are noted as unknown. */
    <T> T object(Function<Fields, T> reader) {
        if (!(value instanceof Map<?, ?> map)) {
            throw wrong("an object is expected");
        }
        Fields fields = new Fields(map);
        T result = reading(() -> reader.apply(fields));
        fields.noteUnknown();
        return result;
    }

    <T> List<T> list(Function<Node, T> reader) {
        if (!(value instanceof List<?> list)) {
            throw wrong("a list is expected");
        }
        List<T> all = new ArrayList<>(list.size());
        for (int i = 0; i < list.size(); i++) {
            all.add(reader.apply(new Node(list.get(i), pointer + "/" + i, unknown)));
        }
        return all;
    }

    String text() {
        if (!(value instanceof String text)) {
            throw wrong("a text is expected; numbers are written as texts, like \"12.5\"");
        }
        return text;
    }

    /** Turns a text into a value; what the value's own type refuses is refused here, with the place. */
    <T> T parsed(Function<String, T> parser) {
        String text = text();
        return reading(() -> parser.apply(text));
    }

    <T> T reading(Supplier<T> step) {
        try {
            return step.get();
        } catch (RecordFormatException e) {
            throw e;
        } catch (IllegalArgumentException | IllegalStateException | ArithmeticException | DateTimeException e) {
            throw new RecordFormatException(pointer, String.valueOf(e.getMessage()), e);
        }
    }

    /** As {@link #reading}, for a step that tells which item of this list it looks at; what it refuses is of that item. */
    <T> T readingItems(Function<IntConsumer, T> step) {
        int[] item = {-1};
        try {
            return step.apply(at -> item[0] = at);
        } catch (IllegalArgumentException | ArithmeticException e) {
            String place = item[0] < 0 ? pointer : pointer + "/" + item[0];
            throw new RecordFormatException(place, String.valueOf(e.getMessage()), e);
        }
    }

    RecordFormatException wrong(String reason) {
        return new RecordFormatException(pointer, reason);
    }

    /** The fields of an object. */
    final class Fields {

        private final Map<?, ?> map;
        private final Set<String> asked = new LinkedHashSet<>();

        private Fields(Map<?, ?> map) {
            this.map = map;
        }

        Node get(String name) {
            return find(name).orElseThrow(() -> wrong("the field \"" + name + "\" is missing"));
        }

        Optional<Node> find(String name) {
            asked.add(name);
            return Optional.ofNullable(map.get(name)).map(found -> new Node(found, pointer + "/" + name, unknown));
        }

        /** The whole with one thing more, if the field is there. */
        <T, P> T with(T whole, String name, Function<Node, P> reader, BiFunction<T, P, T> adding) {
            return find(name)
                    .map(node -> adding.apply(whole, reader.apply(node)))
                    .orElse(whole);
        }

        <T> List<T> list(String name, Function<Node, T> reader) {
            return find(name).map(node -> node.list(reader)).orElseGet(List::of);
        }

        RecordFormatException wrong(String reason) {
            return Node.this.wrong(reason);
        }

        private void noteUnknown() {
            for (Object key : map.keySet()) {
                String name = (String) key;
                if (!asked.contains(name)) {
                    unknown.add(pointer + "/" + name.replace("~", "~0").replace("/", "~1"));
                }
            }
        }
    }
}
