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
            may("document", "csv"),
            may("reckoning", "number", "document"),
            may("quantity", "number", "reckoning"),
            may("simulation", "number", "quantity"),
            may("exercise", "number", "document", "reckoning"),
            may("formula", "number", "reckoning", "quantity"),
            may("chemistry", "number", "csv", "reckoning"),
            may("batch", "number", "reckoning", "quantity", "formula"),
            may("weighing", "number", "reckoning", "quantity", "simulation", "formula"),
            may("analysis", "number", "reckoning", "quantity", "simulation", "chemistry", "soap"),
            may("plan", "number", "reckoning", "quantity", "simulation", "formula", "batch", "weighing"),
            may("amendment", "number", "csv", "formula"),
            may("annex", "csv", "quantity", "formula"),
            may(
                    "limit",
                    "amendment",
                    "annex",
                    "number",
                    "csv",
                    "document",
                    "reckoning",
                    "quantity",
                    "formula",
                    "chemistry",
                    "weighing"),
            may("label", "number", "reckoning", "quantity", "formula", "weighing", "limit"),
            may(
                    "size",
                    "number",
                    "reckoning",
                    "quantity",
                    "simulation",
                    "formula",
                    "batch",
                    "weighing",
                    "plan",
                    "limit"),
            may("solution", "number", "csv", "document", "reckoning", "quantity", "chemistry", "weighing"),
            may("emulsion", "number", "reckoning", "quantity", "weighing", "soap"),
            may("choice", "number", "reckoning", "quantity", "formula", "batch", "weighing", "plan", "size"),
            may("pot", "number", "reckoning", "quantity", "formula", "batch", "weighing", "plan"),
            may("mend", "number", "reckoning", "quantity", "formula", "plan", "pot", "weighing"),
            may(
                    "soap",
                    "number",
                    "csv",
                    "document",
                    "reckoning",
                    "quantity",
                    "simulation",
                    "formula",
                    "chemistry",
                    "batch",
                    "weighing",
                    "limit",
                    "label",
                    "plan",
                    "pot",
                    "size",
                    "mend"),
            may("packing", "number", "reckoning", "quantity", "simulation", "formula", "batch", "pot"),
            may("shelf", "number", "reckoning", "quantity", "formula", "batch", "plan", "pot", "size", "packing"),
            may("series", "number", "reckoning", "quantity", "formula", "batch", "weighing", "limit", "plan", "pot"),
            may("record", "number", "reckoning", "quantity", "formula", "weighing", "plan", "pot", "packing"),
            may(
                    "json",
                    "number",
                    "quantity",
                    "simulation",
                    "formula",
                    "batch",
                    "weighing",
                    "plan",
                    "pot",
                    "packing",
                    "series",
                    "shelf",
                    "record",
                    "reckoning",
                    "chemistry",
                    "soap"),
            may(
                    "verification",
                    "number",
                    "csv",
                    "document",
                    "reckoning",
                    "quantity",
                    "formula",
                    "chemistry",
                    "batch",
                    "weighing",
                    "plan",
                    "limit",
                    "soap"),
            may(
                    "classroom",
                    "number",
                    "document",
                    "reckoning",
                    "quantity",
                    "formula",
                    "chemistry",
                    "batch",
                    "weighing",
                    "plan",
                    "size",
                    "soap",
                    "solution"),
            may(
                    "sheet",
                    "choice",
                    "number",
                    "document",
                    "reckoning",
                    "quantity",
                    "formula",
                    "weighing",
                    "plan",
                    "label",
                    "pot",
                    "packing",
                    "record",
                    "series",
                    "batch",
                    "soap"));

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

    /** The chapters that a chapter may lean on directly. */
    static Set<String> lowerThan(String chapter) {
        return MAY_USE.getOrDefault(chapter, Set.of());
    }

    static boolean isChapter(String name) {
        return MAY_USE.containsKey(name);
    }

    static boolean allows(String from, String to) {
        return from.equals(to) || MAY_USE.getOrDefault(from, Set.of()).contains(to);
    }
}
