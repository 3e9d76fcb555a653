package io.github.formulationmath.limit;

import io.github.formulationmath.number.Excerpt;
import java.io.Serializable;
import java.util.LinkedHashSet;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One side of a scope: the words that are meant, and the words that are left out. */
record ScopeTerms(Set<String> meant, Set<String> leftOut) implements Serializable {

    static final ScopeTerms ANY = new ScopeTerms(Set.of(), Set.of());

    private static final String NOT = "not:";

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
                throw new IllegalArgumentException("a word of the list is \"" + Excerpt.of(word)
                        + "\": write any alone, or words such as hair;face or not:oral");
            }
            (negative ? leftOut : meant).add(term);
        }
        return new ScopeTerms(meant, leftOut);
    }

    boolean isAny() {
        return meant.isEmpty() && leftOut.isEmpty();
    }

    /** Whether what a product states meets these terms; what it does not state, or in words unknown, leaves it open. */
    Applicability applicabilityTo(StatedWords stated) {
        if (isAny()) {
            return Applicability.APPLIES;
        }
        if (stated.written().isEmpty()) {
            return Applicability.MAY_APPLY;
        }
        StatedWords.Match in = meant.isEmpty() ? StatedWords.Match.YES : stated.match(meant);
        StatedWords.Match out = stated.match(leftOut);
        if (in == StatedWords.Match.NO || out == StatedWords.Match.YES) {
            return Applicability.OUT_OF_SCOPE;
        }
        boolean settled = in == StatedWords.Match.YES && out == StatedWords.Match.NO;
        return settled ? Applicability.APPLIES : Applicability.MAY_APPLY;
    }

    /** Whether the words that are known, taken as all there is to say, do not meet these terms. */
    boolean excludes(StatedWords stated) {
        if (isAny() || stated.known().isEmpty()) {
            return false;
        }
        boolean in = meant.isEmpty() || meant.stream().anyMatch(stated.known()::contains);
        return !in || leftOut.stream().anyMatch(stated.known()::contains);
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
