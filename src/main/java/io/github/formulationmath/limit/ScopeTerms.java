package io.github.formulationmath.limit;

import java.io.Serializable;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One side of a scope: the words that are meant, and the words that are left out. */
record ScopeTerms(Set<String> meant, Set<String> leftOut) implements Serializable {

    static final ScopeTerms ANY = new ScopeTerms(Set.of(), Set.of());

    private static final String NOT = "not:";

    /** What a word also is: a pump spray is a spray. */
    private static final Map<String, List<String>> ALSO = Map.of(
            "propellant_spray", List.of("spray"),
            "pump_spray", List.of("spray"),
            "face", List.of("skin"),
            "hands", List.of("skin"),
            "body", List.of("skin"),
            "antidandruff_shampoo", List.of("shampoo"),
            "mouthwash_age_6_to_10", List.of("mouthwash"));

    ScopeTerms {
        meant = Set.copyOf(meant);
        leftOut = Set.copyOf(leftOut);
    }

    /** Reads {@code any}, {@code hair;face} or {@code not:oral;not:lips}. */
    static ScopeTerms parse(String list) {
        if (list.equals("any")) {
            return ANY;
        }
        return of(list.split(";", -1));
    }

    static ScopeTerms of(String... words) {
        Set<String> meant = new LinkedHashSet<>();
        Set<String> leftOut = new LinkedHashSet<>();
        for (String word : words) {
            boolean negative = Objects.requireNonNull(word, "words").startsWith(NOT);
            String term = LimitNames.term(negative ? word.substring(NOT.length()) : word);
            if (term.isEmpty() || term.equals("any")) {
                throw new IllegalArgumentException("a word of the list is \"" + word
                        + "\": write any alone, or words such as hair;face or not:oral");
            }
            (negative ? leftOut : meant).add(term);
        }
        return new ScopeTerms(meant, leftOut);
    }

    /** The words with everything else they are. */
    static Set<String> withImplied(String... words) {
        return Arrays.stream(words)
                .map(LimitNames::term)
                .flatMap(term -> Stream.concat(Stream.of(term), ALSO.getOrDefault(term, List.of()).stream()))
                .collect(Collectors.toUnmodifiableSet());
    }

    boolean isAny() {
        return meant.isEmpty() && leftOut.isEmpty();
    }

    /** Whether what a product states meets these terms; a product that states nothing may or may not. */
    Applicability applicabilityTo(Set<String> stated) {
        if (isAny()) {
            return Applicability.APPLIES;
        }
        if (stated.isEmpty()) {
            return Applicability.MAY_APPLY;
        }
        boolean in = meant.isEmpty() || meant.stream().anyMatch(stated::contains);
        boolean out = leftOut.stream().anyMatch(stated::contains);
        return in && !out ? Applicability.APPLIES : Applicability.OUT_OF_SCOPE;
    }

    Stream<String> words() {
        return Stream.concat(meant.stream(), leftOut.stream());
    }

    @Override
    public String toString() {
        return isAny()
                ? "any"
                : Stream.concat(
                                meant.stream().sorted(),
                                leftOut.stream().sorted().map(NOT::concat))
                        .collect(Collectors.joining(";"));
    }
}
