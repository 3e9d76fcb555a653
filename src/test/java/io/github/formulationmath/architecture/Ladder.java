package io.github.formulationmath.architecture;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The chapters of the library and, for each, the chapters it may lean on. */
final class Ladder {

    static final String ROOT = "io.github.formulationmath";

    private static final Map<String, Set<String>> MAY_USE = Map.ofEntries(
            Map.entry("number", Set.of()),
            Map.entry("csv", Set.of("number")),
            Map.entry("quantity", Set.of("number")),
            Map.entry("working", Set.of("number", "quantity")),
            Map.entry("formula", Set.of("number", "quantity", "working")),
            Map.entry("scaling", Set.of("number", "quantity", "working", "formula")),
            Map.entry("weighing", Set.of("number", "quantity", "working", "formula")),
            Map.entry("chemistry", Set.of("number", "csv", "quantity", "working")),
            Map.entry(
                    "limit",
                    Set.of("number", "csv", "quantity", "working", "formula", "chemistry", "weighing", "scaling")),
            Map.entry(
                    "planning",
                    Set.of("number", "quantity", "working", "formula", "chemistry", "weighing", "scaling", "limit")),
            Map.entry(
                    "record",
                    Set.of(
                            "number",
                            "quantity",
                            "working",
                            "formula",
                            "chemistry",
                            "weighing",
                            "scaling",
                            "limit",
                            "planning")),
            Map.entry(
                    "verification",
                    Set.of(
                            "number",
                            "csv",
                            "quantity",
                            "working",
                            "formula",
                            "chemistry",
                            "weighing",
                            "scaling",
                            "limit",
                            "planning")),
            Map.entry(
                    "sheet",
                    Set.of(
                            "number",
                            "csv",
                            "quantity",
                            "working",
                            "formula",
                            "chemistry",
                            "weighing",
                            "scaling",
                            "limit",
                            "planning",
                            "record",
                            "verification")));

    private Ladder() {}

    /** The chapter a package belongs to, or nothing if it is no package of the library. */
    static Optional<String> chapterOf(String packageName) {
        if (!packageName.startsWith(ROOT + ".")) {
            return Optional.empty();
        }
        return Optional.of(packageName.substring(ROOT.length() + 1));
    }

    /** Every edge that the ladder lists, as {@code from → to}. */
    static Set<String> edges() {
        return MAY_USE.entrySet().stream()
                .flatMap(entry -> entry.getValue().stream().map(to -> edge(entry.getKey(), to)))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    static String edge(String from, String to) {
        return from + " → " + to;
    }

    static boolean isChapter(String name) {
        return MAY_USE.containsKey(name);
    }

    static boolean allows(String from, String to) {
        return from.equals(to) || MAY_USE.getOrDefault(from, Set.of()).contains(to);
    }
}
