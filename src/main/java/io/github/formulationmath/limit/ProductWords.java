package io.github.formulationmath.limit;

import io.github.formulationmath.formula.NameBook;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The words by which a table tells products apart, and the purposes it asks for: what {@link Product#on},
 * {@link Product#ofKind}, {@link Product#inForm} and {@link Product#using} can say that settles anything.
 *
 * <p>A word that is not among them settles nothing: limits that ask for such a word are reported as ones that may apply.
 * The word {@code other} is always among them; it says that the product is none of the things the table names.
 *
 * <p>Example: {@code LimitTable.eu2024February().words().forms()} holds {@code spray} and {@code loose_powder}, and
 * {@code cream}, which is neither.
 *
 * <p>The sets are sorted and unmodifiable.
 *
 * @param areas parts of the body
 * @param kinds kinds of product
 * @param forms forms of product
 * @param purposes what a substance may be used for; empty if the table does not ask
 */
public record ProductWords(Set<String> areas, Set<String> kinds, Set<String> forms, Set<String> purposes) {

    /** None of the things a table names. */
    static final String OTHER = "other";

    private static final Pattern GAP = Pattern.compile("[\\s_-]+");
    private static final int MOST_CLOSE = 5;

    /** What a word also is: a pump spray is a spray. */
    private static final Map<String, List<String>> ALSO = Map.of(
            "propellant_spray", List.of("spray"),
            "pump_spray", List.of("spray"),
            "aerosol", List.of("propellant_spray", "spray"),
            "face", List.of("skin"),
            "hands", List.of("skin"),
            "body", List.of("skin"),
            "mouth", List.of("oral", "mucous_membranes"),
            "oral", List.of("mucous_membranes"),
            "antidandruff_shampoo", List.of("shampoo"),
            "mouthwash_age_6_to_10", List.of("mouthwash"));

    private static final Set<String> AIRBORNE =
            Set.of("spray", "propellant_spray", "pump_spray", "aerosol", "loose_powder");

    /** Forms that are no spray and no powder, whatever else a table may name. */
    private static final Set<String> NOT_AIRBORNE =
            Set.of("cream", "gel", "ointment", "balm", "paste", "stick", "bar", "lotion", "emulsion");

    /**
     * Sorts and copies.
     *
     * @param areas parts of the body
     * @param kinds kinds of product
     * @param forms forms of product
     * @param purposes purposes of a substance
     */
    public ProductWords {
        areas = sorted(Objects.requireNonNull(areas, "areas"));
        kinds = sorted(Objects.requireNonNull(kinds, "kinds"));
        forms = sorted(Objects.requireNonNull(forms, "forms"));
        purposes = sorted(Objects.requireNonNull(purposes, "purposes"));
    }

    /** A word as it is compared: letter case, spaces and hyphens make no difference. */
    static String term(String word) {
        return GAP.matcher(word.strip().toLowerCase(Locale.ROOT)).replaceAll("_");
    }

    static ProductWords of(List<UsageLimit> limits) {
        return new ProductWords(
                side(limits, Scope::areas),
                side(limits, Scope::products),
                side(limits, Scope::forms),
                purposes(limits));
    }

    private static Set<String> side(List<UsageLimit> limits, Function<Scope, Set<String>> terms) {
        Set<String> words = new TreeSet<>();
        for (UsageLimit limit : limits) {
            for (String word : terms.apply(limit.scope())) {
                words.add(word.startsWith(Scope.NOT) ? word.substring(Scope.NOT.length()) : word);
            }
        }
        Set<String> named = Set.copyOf(words);
        ALSO.forEach((word, also) -> {
            if (also.stream().anyMatch(named::contains)) {
                words.add(word);
            }
        });
        if (named.stream().anyMatch(AIRBORNE::contains)) {
            words.addAll(NOT_AIRBORNE);
        }
        words.add(OTHER);
        return words;
    }

    private static Set<String> purposes(List<UsageLimit> limits) {
        Set<String> words = new TreeSet<>();
        for (UsageLimit limit : limits) {
            if (!limit.scope().purpose().equals(Scope.ANY)) {
                words.add(limit.scope().purpose());
                words.add(limit.scope().otherPurpose());
            }
        }
        return words;
    }

    private static Set<String> sorted(Set<String> words) {
        return java.util.Collections.unmodifiableSet(new LinkedHashSet<>(new TreeSet<>(words)));
    }

    /** A word with everything else that it is. */
    static Stream<String> withImplied(String word) {
        return Stream.concat(Stream.of(word), ALSO.getOrDefault(word, List.of()).stream());
    }

    /** Whether a form is surely none of the terms, although no table may name it. */
    static boolean isSurelyNot(String word, String term) {
        return word.equals(OTHER) || NOT_AIRBORNE.contains(word) && AIRBORNE.contains(term);
    }

    /** Whether a word says nothing but that the product is no spray and no powder. */
    static boolean isPlain(String word) {
        return NOT_AIRBORNE.contains(word);
    }

    /** Known words that may be meant by one that is not: spelt alike, of the same letters, or with a part in common. */
    static List<String> close(String word, Collection<String> known) {
        List<String> alike = NameBook.of(known).alike(word, MOST_CLOSE);
        List<String> parts = List.of(word.split("_", -1));
        return alike.isEmpty()
                ? known.stream()
                        .filter(other -> letters(other).equals(letters(word))
                                || Stream.of(other.split("_", -1)).anyMatch(parts::contains))
                        .sorted()
                        .limit(MOST_CLOSE)
                        .toList()
                : alike;
    }

    private static List<Integer> letters(String word) {
        return word.chars().sorted().boxed().toList();
    }
}
