package io.github.formulationmath.guide;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/** Changes one digit, or the outcome of one comparison, in a working that is JSON. */
final class OneDigit {

    /** What is changed. */
    enum Of {
        COMPUTED_VALUE,
        DECISION,
        ROUNDING,
        ANSWER,
        GIVEN,
        TEXT;

        /** What can be found out by computing alone. */
        static final List<Of> ARITHMETIC = List.of(COMPUTED_VALUE, DECISION, ROUNDING, ANSWER);
        /** What the seal alone can tell. */
        static final List<Of> SEALED = List.of(GIVEN, TEXT);
    }

    private static final ObjectMapper JSON = new ObjectMapper();

    private record Site(Path file, String object, String field) {}

    private final Map<Of, List<Site>> sites = new EnumMap<>(Of.class);

    OneDigit(List<Path> files) throws IOException {
        for (Of of : Of.values()) {
            sites.put(of, new ArrayList<>());
        }
        for (Path file : files) {
            collect(file, JSON.readTree(file.toFile()));
        }
    }

    int sites(Of of) {
        return at(of).size();
    }

    private List<Site> at(Of of) {
        return sites.getOrDefault(of, List.of());
    }

    private void collect(Path file, JsonNode document) {
        add(Of.ANSWER, file, "/answer", "value", document);
        add(Of.TEXT, file, "/question", "english", document);
        for (int i = 0; i < document.get("lines").size(); i++) {
            line(file, "/lines/" + i, document);
        }
    }

    private void line(Path file, String place, JsonNode document) {
        JsonNode line = document.at(place);
        String is = line.get("is").asText();
        switch (is) {
            case "given", "number" -> add(Of.GIVEN, file, place, "value", document);
            case "comparison" -> add(Of.DECISION, file, place, "holds", document);
            case "note" -> add(Of.TEXT, file, place + "/text", "english", document);
            // The last digits of a statistical function are held by the seal alone.
            case "function" -> add(Of.TEXT, file, place, "value", document);
            default -> add(Of.COMPUTED_VALUE, file, place, "value", document);
        }
        // Nothing is the same number of steps of any size.
        boolean tells = is.equals("rounded") && !line.path("divisions").asText().equals("0");
        for (String field : tells ? Set.of("step", "divisions", "whole", "digits") : Set.<String>of()) {
            add(Of.ROUNDING, file, place, field, document);
        }
        add(Of.TEXT, file, place, "name", document);
        add(Of.TEXT, file, place + "/meaning", "english", document);
        add(Of.TEXT, file, place + "/source", "written", document);
    }

    private void add(Of of, Path file, String object, String field, JsonNode document) {
        String text = document.at(object).path(field).asText("");
        if (field.equals("holds") || text.chars().anyMatch(OneDigit::isDigit)) {
            at(of).add(new Site(file, object, field));
        }
    }

    private static boolean isDigit(int c) {
        return c >= '0' && c <= '9';
    }

    /** Writes a changed working and says what was changed. */
    String write(Of of, Random random, Path to) throws IOException {
        Site site = at(of).get(random.nextInt(at(of).size()));
        JsonNode document = JSON.readTree(site.file().toFile());
        ObjectNode object = (ObjectNode) document.at(site.object());
        String before = object.get(site.field()).asText();
        String after = changed(before, random);
        object.set(site.field(), TextNode.valueOf(after));
        Files.writeString(to, JSON.writeValueAsString(document));
        return site.file() + site.object() + "/" + site.field() + ": " + before + " made " + after;
    }

    private static String changed(String text, Random random) {
        if (text.equals("true") || text.equals("false")) {
            return text.equals("true") ? "false" : "true";
        }
        int[] digits = java.util.stream.IntStream.range(0, text.length())
                .filter(i -> isDigit(text.charAt(i)))
                .toArray();
        int at = digits[random.nextInt(digits.length)];
        char other = (char) ('0' + (text.charAt(at) - '0' + 1 + random.nextInt(9)) % 10);
        return text.substring(0, at) + other + text.substring(at + 1);
    }
}
