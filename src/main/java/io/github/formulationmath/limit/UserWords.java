package io.github.formulationmath.limit;

import io.github.formulationmath.number.Excerpt;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Who uses a product, in words: {@code general} or {@code professional}, and how young the youngest is for whom it is
 * meant. The list is closed but for other ages ({@code from_12}): a word that is not on it is refused, with the list.
 */
final class UserWords {

    /** From which age, in full years, each word says that a product is used. */
    private static final Map<String, Integer> YOUNGEST = Map.of(
            "under_3", 0, "babies", 0, "from_3", 3, "from_6", 6, "from_10", 10, "from_16", 16, "from_18", 18, "adults",
            18);

    private static final String LEFT_OUT = "not:under_";
    private static final String FROM = "from_";
    private static final String UNDER = "under_";

    /** No age. */
    private static final int NONE = -1;

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
            if (!all().contains(word) && age(word, FROM) == NONE && age(word, UNDER) == NONE) {
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
        int youngest = NONE;
        for (String word : product.users()) {
            OptionalInt age = ageOf(word);
            if (age.isPresent()) {
                youngest = youngest == NONE ? age.getAsInt() : Math.min(youngest, age.getAsInt());
            }
        }
        if (isForBabies(product)) {
            return OptionalInt.of(0);
        }
        return youngest == NONE ? OptionalInt.empty() : OptionalInt.of(youngest);
    }

    private static boolean isForBabies(Product product) {
        for (String kind : product.kinds()) {
            for (String one : ProductWords.Vocabulary.KINDS.also(kind)) {
                if (!Collections.disjoint(List.of(one.split("_", -1)), FOR_BABIES)) {
                    return true;
                }
            }
        }
        for (String area : product.areas()) {
            if (ProductWords.Vocabulary.AREAS.also(area).contains("nappy_area")) {
                return true;
            }
        }
        return false;
    }

    /** Something for those under an age may be for newborns. */
    private static OptionalInt ageOf(String word) {
        Integer listed = YOUNGEST.get(word);
        if (listed != null) {
            return OptionalInt.of(listed);
        }
        if (age(word, UNDER) != NONE) {
            return OptionalInt.of(0);
        }
        return age(word, FROM) == NONE ? OptionalInt.empty() : OptionalInt.of(age(word, FROM));
    }

    /** The age that follows a beginning, in full years from 1 to 99; -1 if the word is another. Ages may be on no list. */
    private static int age(String word, String beginning) {
        int digits = word.length() - beginning.length();
        if (!word.startsWith(beginning) || digits < 1 || digits > 2 || word.charAt(beginning.length()) == '0') {
            return NONE;
        }
        int age = 0;
        for (int i = beginning.length(); i < word.length(); i++) {
            if (word.charAt(i) < '0' || word.charAt(i) > '9') {
                return NONE;
            }
            age = 10 * age + word.charAt(i) - '0';
        }
        return age;
    }

    /** Whether a product is for those whom a scope is meant for; an age that is not stated leaves it open. */
    static Applicability applicability(Set<String> scope, Product product) {
        Applicability found = Applicability.APPLIES;
        for (String word : scope) {
            int leftOut = age(word, LEFT_OUT);
            if (leftOut == NONE) {
                boolean same = word.equals(Scope.PROFESSIONAL) == product.isProfessional();
                found = found.and(same ? Applicability.APPLIES : Applicability.OUT_OF_SCOPE);
                continue;
            }
            OptionalInt youngest = youngest(product);
            if (youngest.isEmpty()) {
                found = found.and(Applicability.MAY_APPLY);
            } else if (youngest.getAsInt() < leftOut) {
                found = Applicability.OUT_OF_SCOPE;
            }
        }
        return found;
    }

    /** The words of a scope: general or professional, and ages left out. */
    static Set<String> requireScope(Set<String> words) {
        for (String word : words) {
            if (!word.equals(Scope.GENERAL) && !word.equals(Scope.PROFESSIONAL) && age(word, LEFT_OUT) == NONE) {
                throw new IllegalArgumentException("user is \"" + Excerpt.of(word) + "\": " + remedy(word));
            }
        }
        if (words.contains(Scope.GENERAL) && words.contains(Scope.PROFESSIONAL)) {
            throw new IllegalArgumentException("user is general and professional: leave both out, that is everybody");
        }
        return words;
    }

    /** What to write instead of a word that no scope has: what is probably meant, or all there is. */
    private static String remedy(String word) {
        String stem = word.substring(Scope.prefix(word).length());
        OptionalInt age = ageOf(stem);
        if (word.equals(Scope.NOT + Scope.PROFESSIONAL)) {
            return "write " + Scope.GENERAL;
        }
        if (word.equals(Scope.NOT + Scope.GENERAL)) {
            return "write " + Scope.PROFESSIONAL;
        }
        if (age.isPresent() && age.getAsInt() > 0) {
            return "a scope says which ages are left out, write not:under_" + age.getAsInt();
        }
        if (age.isPresent()) {
            return "a scope says which ages are left out, for example not:under_3; a limit for the youngest alone is written"
                    + " as one for everybody";
        }
        List<String> close = ProductWords.close(stem, all());
        return (close.isEmpty() ? "" : String.join(" or ", close) + " may be meant; ") + "it must be " + Scope.GENERAL
                + " or " + Scope.PROFESSIONAL + ", or an age left out, for example not:under_3";
    }
}
