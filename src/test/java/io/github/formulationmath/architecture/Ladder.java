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
            may("number"),
            may("csv", "number"),
            may("working", "number"),
            may("quantity", "number", "working"),
            may("formula", "number", "quantity", "working"),
            may("chemistry", "number", "csv", "working"),
            may("scaling", "number", "quantity", "working", "formula"),
            may("weighing", "number", "quantity", "working", "formula"),
            may("limit", "number", "csv", "quantity", "working", "formula", "chemistry", "weighing"),
            may("planning", "number", "quantity", "working", "formula", "scaling", "weighing", "limit"),
            may("record", "number", "quantity", "working", "formula", "scaling", "weighing", "planning"),
            may(
                    "verification",
                    "number",
                    "csv",
                    "quantity",
                    "working",
                    "formula",
                    "chemistry",
                    "scaling",
                    "weighing",
                    "limit"),
            may(
                    "sheet",
                    "number",
                    "csv",
                    "quantity",
                    "working",
                    "formula",
                    "scaling",
                    "weighing",
                    "limit",
                    "planning",
                    "record"));

    private static Map.Entry<String, Set<String>> may(String chapter, String... lower) {
        return Map.entry(chapter, Set.of(lower));
    }

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
