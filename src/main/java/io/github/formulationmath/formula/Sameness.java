package io.github.formulationmath.formula;

import io.github.formulationmath.number.Excerpt;
import java.util.ArrayList;
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
    private final List<Integer> parents = new ArrayList<>();
    private final Map<String, Integer> byKey = new HashMap<>();

    /** @param whole what holds the substances, for messages */
    Sameness(String whole) {
        this.whole = whole;
    }

    /** Adds every part of a material on a line, or somewhere else. */
    void addAll(Ingredient material, @Nullable FormulaLine line, String elsewhere) {
        material.parts().keySet().forEach(part -> add(new Mention(part, line, elsewhere)));
    }

    void add(Mention mention) {
        int own = parents.size();
        mentions.add(mention);
        parents.add(own);
        for (String key : mention.substance().keys()) {
            Integer known = byKey.putIfAbsent(key, own);
            if (known != null) {
                join(known, own);
            }
        }
    }

    private void join(int one, int other) {
        int first = root(one);
        int second = root(other);
        parents.set(Math.max(first, second), Math.min(first, second));
    }

    private int root(int mention) {
        int at = mention;
        while (parents.get(at) != at) {
            parents.set(at, parents.get(parents.get(at)));
            at = parents.get(at);
        }
        return at;
    }

    /**
     * The mentions of each substance, in the order of its first; substances in that order too.
     *
     * @throws IllegalArgumentException if one substance has two CAS numbers
     */
    List<List<Mention>> groups() {
        Map<Integer, List<Mention>> groups = new HashMap<>();
        List<List<Mention>> ordered = new ArrayList<>();
        for (int i = 0; i < mentions.size(); i++) {
            List<Mention> group = groups.computeIfAbsent(root(i), r -> {
                List<Mention> fresh = new ArrayList<>(1);
                ordered.add(fresh);
                return fresh;
            });
            group.add(mentions.get(i));
        }
        ordered.forEach(this::requireOneNumber);
        return ordered;
    }

    private void requireOneNumber(List<Mention> group) {
        Mention first = null;
        String number = "";
        for (Mention mention : group) {
            for (String key : mention.substance().keys()) {
                if (!CasNumbers.isNumber(key)) {
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
                .filter(key -> !CasNumbers.isNumber(key))
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
