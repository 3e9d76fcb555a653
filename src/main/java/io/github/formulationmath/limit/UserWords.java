package io.github.formulationmath.limit;

import io.github.formulationmath.number.Excerpt;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Who uses a product, in words: {@code general} or {@code professional}, and how young the youngest is for whom it is
 * meant. The list is closed but for other ages ({@code from_12}): a word that is not on it is refused, with the list.
 */
final class UserWords {

    /** From which age, in full years, each word says that a product is used. */
    private static final Map<String, Integer> YOUNGEST = Map.of(
            "under_3", 0, "babies", 0, "from_3", 3, "from_6", 6, "from_10", 10, "from_16", 16, "from_18", 18, "adults",
            18);

    private static final Pattern UNDER = Pattern.compile("not:under_([1-9][0-9]?)");

    /** Ages that are on no list: from_12, under_6. */
    private static final Pattern AGE = Pattern.compile("(from|under)_([1-9][0-9]?)");

    /** Kinds of product of which everybody knows for whom they are. */
    private static final Set<String> FOR_BABIES = Set.of("baby", "babies", "nappy", "diaper");

    private UserWords() {}

    /** All words that a product can state. */
    static Set<String> all() {
        Set<String> words = new TreeSet<>(YOUNGEST.keySet());
        words.add(Scope.GENERAL);
        words.add(Scope.PROFESSIONAL);
        return words;
    }

    static Set<String> requireKnown(Set<String> words) {
        for (String word : words) {
            if (!all().contains(word) && !AGE.matcher(word).matches()) {
                throw new IllegalArgumentException("user is \"" + Excerpt.of(word) + "\": state " + Scope.GENERAL
                        + " or " + Scope.PROFESSIONAL + ", and how young the youngest is: " + String.join(", ", byAge())
                        + ", or any other age");
            }
        }
        if (words.contains(Scope.GENERAL) && words.contains(Scope.PROFESSIONAL)) {
            throw new IllegalArgumentException(
                    "user is general and professional: check the product once for each, a limit may differ");
        }
        return words;
    }

    private static List<String> byAge() {
        Map<Integer, String> words = new TreeMap<>();
        YOUNGEST.forEach((word, age) -> words.merge(age, word, (one, other) -> one + " (" + other + ")"));
        return List.copyOf(words.values());
    }

    /** How young the youngest is, in full years; a kind of product for babies says it as well. */
    static OptionalInt youngest(Product product) {
        List<Integer> ages = new ArrayList<>();
        product.users().forEach(word -> ageOf(word).ifPresent(ages::add));
        for (String kind : product.kinds()) {
            if (ProductWords.Vocabulary.KINDS.also(kind).stream()
                    .flatMap(one -> Stream.of(one.split("_", -1)))
                    .anyMatch(FOR_BABIES::contains)) {
                ages.add(0);
            }
        }
        if (product.areas().stream()
                .anyMatch(area -> ProductWords.Vocabulary.AREAS.also(area).contains("nappy_area"))) {
            ages.add(0);
        }
        return ages.stream().mapToInt(Integer::intValue).min();
    }

    /** Something for those under an age may be for newborns. */
    private static OptionalInt ageOf(String word) {
        Integer listed = YOUNGEST.get(word);
        if (listed != null) {
            return OptionalInt.of(listed);
        }
        Matcher age = AGE.matcher(word);
        return !age.matches()
                ? OptionalInt.empty()
                : OptionalInt.of(word.startsWith("from") ? Integer.parseInt(age.group(2)) : 0);
    }

    /** Whether a product is for those whom a scope is meant for; an age that is not stated leaves it open. */
    static Applicability applicability(Set<String> scope, Product product) {
        Applicability found = Applicability.APPLIES;
        for (String word : scope) {
            Matcher under = UNDER.matcher(word);
            if (!under.matches()) {
                boolean same = word.equals(Scope.PROFESSIONAL) == product.isProfessional();
                found = found.and(same ? Applicability.APPLIES : Applicability.OUT_OF_SCOPE);
                continue;
            }
            OptionalInt youngest = youngest(product);
            if (youngest.isEmpty()) {
                found = found.and(Applicability.MAY_APPLY);
            } else if (youngest.getAsInt() < Integer.parseInt(under.group(1))) {
                found = Applicability.OUT_OF_SCOPE;
            }
        }
        return found;
    }

    /** The words of a scope: general or professional, and ages left out. */
    static Set<String> requireScope(Set<String> words) {
        for (String word : words) {
            if (!word.equals(Scope.GENERAL)
                    && !word.equals(Scope.PROFESSIONAL)
                    && !UNDER.matcher(word).matches()) {
                throw new IllegalArgumentException("user is \"" + Excerpt.of(word) + "\": it must be " + Scope.GENERAL
                        + " or " + Scope.PROFESSIONAL + ", or an age left out, for example not:under_3");
            }
        }
        if (words.contains(Scope.GENERAL) && words.contains(Scope.PROFESSIONAL)) {
            throw new IllegalArgumentException("user is general and professional: leave both out, that is everybody");
        }
        return words;
    }
}
