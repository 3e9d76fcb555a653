package io.github.formulationmath.formula;

import io.github.formulationmath.number.Excerpt;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Sorts substances as written into groups: two are the same if they share a name, a synonym or a CAS number, directly or
 * through others. Joined sets with path halving, so that the work grows with the number of keys.
 */
final class Sameness {

    /** A substance as written, on a line or somewhere else. */
    record Mention(Substance substance, @Nullable FormulaLine line, String elsewhere) {

        String place() {
            return line == null ? elsewhere : "line " + line.position() + " \"" + line.name() + "\"";
        }
    }

    private final String whole;
    private final List<Mention> mentions = new ArrayList<>();
    private final Map<String, Integer> byKey = new HashMap<>();
    /** For each mention one that is the same and stands before it, or itself. */
    private int[] parents = new int[16];

    private int[] groupOf = new int[0];
    private boolean anyJoined;
    /** Empty until asked for. */
    private List<List<Mention>> groups = List.of();

    /** @param whole what holds the substances, for messages */
    Sameness(String whole) {
        this.whole = whole;
    }

    /**
     * The substances of the lines, and of a material that may come to them, sorted.
     *
     * @throws IllegalArgumentException if one substance has two CAS numbers
     */
    static Sameness of(String formulaName, List<FormulaLine> lines, Ingredient... more) {
        Sameness sameness = new Sameness("\"" + formulaName + "\"");
        for (FormulaLine line : lines) {
            sameness.addAll(line.ingredient(), line, "");
        }
        for (Ingredient material : more) {
            sameness.addAll(material, null, "\"" + material.name() + "\"");
        }
        sameness.groups();
        return sameness;
    }

    String whole() {
        return whole;
    }

    /** Adds every part of a material on a line, or somewhere else. */
    void addAll(Ingredient material, @Nullable FormulaLine line, String elsewhere) {
        for (Substance part : material.parts().keySet()) {
            add(new Mention(part, line, elsewhere));
        }
    }

    void add(Mention mention) {
        int own = mentions.size();
        mentions.add(mention);
        if (own == parents.length) {
            parents = Arrays.copyOf(parents, 2 * own);
        }
        parents[own] = own;
        List<String> keys = mention.substance().keys();
        for (int i = 0; i < keys.size(); i++) {
            Integer known = byKey.putIfAbsent(keys.get(i), own);
            if (known != null) {
                join(known, own);
            }
        }
    }

    private void join(int one, int other) {
        int first = root(one);
        int second = root(other);
        parents[Math.max(first, second)] = Math.min(first, second);
        anyJoined = true;
    }

    private int root(int mention) {
        int at = mention;
        while (parents[at] != at) {
            parents[at] = parents[parents[at]];
            at = parents[at];
        }
        return at;
    }

    /**
     * The mentions of each substance, in the order of its first; substances in that order too. Sorted once, when all are there.
     *
     * @throws IllegalArgumentException if one substance has two CAS numbers
     */
    List<List<Mention>> groups() {
        if (groups.isEmpty()) {
            groups = sorted();
        }
        return groups;
    }

    private List<List<Mention>> sorted() {
        List<List<Mention>> ordered = new ArrayList<>(mentions.size());
        groupOf = new int[mentions.size()];
        for (int i = 0; i < groupOf.length; i++) {
            Mention mention = mentions.get(i);
            int root = root(i);
            if (root == i) {
                groupOf[i] = ordered.size();
                ordered.add(anyJoined ? new ArrayList<>(List.of(mention)) : List.of(mention));
            } else {
                groupOf[i] = groupOf[root];
                ordered.get(groupOf[i]).add(mention);
            }
        }
        ordered.forEach(this::requireOneNumber);
        return ordered;
    }

    /** Which of the {@link #groups()} a mention is in, both counted from 0. */
    int groupOf(int mention) {
        return groupOf[mention];
    }

    /** Which of the groups has a key; -1 if none has. */
    int groupWith(String key) {
        Integer mention = byKey.get(key);
        return mention == null ? -1 : groupOf[mention];
    }

    private void requireOneNumber(List<Mention> group) {
        Mention first = null;
        String number = "";
        for (Mention mention : group) {
            for (String key : mention.substance().keys()) {
                if (!Substance.isCas(key)) {
                    continue;
                }
                if (first == null) {
                    first = mention;
                    number = key;
                } else if (!key.equals(number)) {
                    throw twoNumbers(group, first, number, mention, key);
                }
            }
        }
    }

    private IllegalArgumentException twoNumbers(
            List<Mention> group, Mention first, String number, Mention second, String other) {
        List<String> names = group.stream()
                .flatMap(mention -> mention.substance().keys().stream())
                .filter(key -> !Substance.isCas(key))
                .distinct()
                .toList();
        String joined = Excerpt.ofAll(names);
        return new IllegalArgumentException(
                Excerpt.of(whole) + ": one substance (" + joined + ") has two CAS numbers, " + number
                        + " for " + Excerpt.of(first.substance().name()) + " in " + Excerpt.of(first.place()) + " and "
                        + other + " for "
                        + Excerpt.of(second.substance().name()) + " in " + Excerpt.of(second.place())
                        + ": correct the number that is wrong, or, if they are two substances, the name or synonym that they share");
    }
}
