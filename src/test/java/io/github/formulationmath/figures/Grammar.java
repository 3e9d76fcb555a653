package io.github.formulationmath.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A picture as data: which columns of its table are drawn against which, in the words of Vega-Lite, an open grammar of
 * graphics (vega.github.io/vega-lite, version 5), so that others can draw it with programs of their own.
 *
 * @param layers what is drawn, one over the other, as JSON
 */
record Grammar(List<String> layers) {

    static final Grammar NOTHING = new Grammar(List.of());

    /** The place of a column in the picture. */
    record Place(String channel, String column, String type, String more) {

        static Place number(String channel, String column) {
            return new Place(channel, column, "quantitative", "");
        }

        static Place logarithmic(String channel, String column) {
            return new Place(channel, column, "quantitative", ", \"scale\": {\"type\": \"log\"}");
        }

        static Place name(String channel, String column) {
            return new Place(channel, column, "nominal", "");
        }

        /** A second end, which takes its kind from the first. */
        static Place end(String channel, String column) {
            return new Place(channel, column, "", "");
        }

        private String json() {
            // In a name of a field a point would lead into it.
            String field = quoted(column.replace(".", "\\."));
            String kind = type.isEmpty() ? "" : ", \"type\": " + quoted(type) + ", \"title\": " + quoted(column);
            return quoted(channel) + ": {\"field\": " + field + kind + more + "}";
        }
    }

    /** With another layer: a mark, of rows that pass a test if one is given. */
    Grammar with(String mark, String test, Place... places) {
        List<String> all = new ArrayList<>(layers);
        String filter = test.isEmpty() ? "" : "\"transform\": [{\"filter\": " + quoted(test) + "}], ";
        all.add("{" + filter + "\"mark\": {\"type\": " + quoted(mark) + "}, \"encoding\": {"
                + List.of(places).stream().map(Place::json).collect(Collectors.joining(", ")) + "}}");
        return new Grammar(all);
    }

    String json(Figure figure) {
        return "{\n  \"$schema\": \"https://vega.github.io/schema/vega-lite/v5.json\",\n"
                + "  \"title\": {\"text\": " + quoted(figure.title()) + ", \"subtitle\": ["
                + figure.subtitles().stream().map(Grammar::quoted).collect(Collectors.joining(", ")) + "]},\n"
                + "  \"description\": " + quoted(figure.description()) + ",\n"
                + "  \"width\": " + figure.width() * 3 / 4 + ",\n  \"height\": " + figure.height() * 3 / 4 + ",\n"
                + "  \"data\": {\"url\": " + quoted(figure.name() + ".csv") + ", \"format\": {\"type\": \"csv\"}},\n"
                + "  \"layer\": [\n    " + String.join(",\n    ", layers) + "\n  ]\n}\n";
    }

    private static String quoted(String text) {
        StringBuilder out = new StringBuilder("\"");
        text.chars().forEach(c -> {
            if (c == '"' || c == '\\') {
                out.append('\\').append((char) c);
            } else if (c < ' ') {
                out.append(String.format(Locale.ROOT, "\\u%04x", c));
            } else {
                out.append((char) c);
            }
        });
        return out.append('"').toString();
    }
}
