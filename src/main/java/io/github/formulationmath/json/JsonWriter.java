package io.github.formulationmath.json;

import java.io.IOException;
import java.io.Writer;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Objects, lists and texts as JSON (RFC 8259), without Jackson: there is nothing to it but the escaping of texts. One line
 * without white space; what has to be escaped is, as RFC 8785 has it, and nothing else.
 */
final class JsonWriter {

    /** The most values that are read, and so the most that are written. */
    static final int MAX_VALUES = 1_000_000;

    private final Writer out;
    private final boolean sorted;

    private JsonWriter(Writer out, boolean sorted) {
        this.out = out;
        this.sorted = sorted;
    }

    /** Fields in the order in which they were put in. */
    static void write(Object document, Writer writer) throws IOException {
        if (count(document) > MAX_VALUES) {
            throw new IllegalArgumentException("the document has more than " + MAX_VALUES
                    + " values, which could not be read again: split the formula, start a new record, or ask for less");
        }
        new JsonWriter(writer, false).value(document);
        writer.flush();
    }

    /**
     * The canonical form of RFC 8785 (JSON Canonicalization Scheme) of a document that holds neither numbers nor field names
     * outside ASCII: as written, and the fields of each object sorted.
     */
    static void writeCanonical(Object document, Writer writer) throws IOException {
        new JsonWriter(writer, true).value(document);
    }

    private static long count(Object value) {
        Collection<?> parts = value instanceof Written object
                ? object.fields().values()
                : value instanceof List<?> list ? list : List.of();
        long count = 1;
        for (Object part : parts) {
            count += count(part);
        }
        return count;
    }

    private void value(Object value) throws IOException {
        if (value instanceof Written object) {
            object(sorted ? new TreeMap<>(object.fields()) : object.fields());
        } else if (value instanceof List<?> list) {
            list(list);
        } else {
            text((String) value);
        }
    }

    private void object(Map<String, Object> fields) throws IOException {
        out.write('{');
        String between = "";
        for (Map.Entry<String, Object> field : fields.entrySet()) {
            out.write(between);
            text(field.getKey());
            out.write(':');
            value(field.getValue());
            between = ",";
        }
        out.write('}');
    }

    private void list(List<?> list) throws IOException {
        out.write('[');
        for (Iterator<?> items = list.iterator(); items.hasNext(); ) {
            value(items.next());
            out.write(items.hasNext() ? "," : "");
        }
        out.write(']');
    }

    private void text(String text) throws IOException {
        StringBuilder escaped = new StringBuilder(text.length() + 2).append('"');
        for (int i = 0; i < text.length(); i++) {
            escape(text.charAt(i), escaped);
        }
        out.write(escaped.append('"').toString());
    }

    private static void escape(char c, StringBuilder to) {
        switch (c) {
            case '"' -> to.append("\\\"");
            case '\\' -> to.append("\\\\");
            case '\b' -> to.append("\\b");
            case '\t' -> to.append("\\t");
            case '\n' -> to.append("\\n");
            case '\f' -> to.append("\\f");
            case '\r' -> to.append("\\r");
            default -> {
                if (c < ' ') {
                    to.append("\\u00").append(c < 0x10 ? '0' : '1').append(Character.forDigit(c & 0xF, 16));
                } else {
                    to.append(c);
                }
            }
        }
    }
}
