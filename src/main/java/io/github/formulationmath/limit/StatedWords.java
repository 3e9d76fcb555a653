package io.github.formulationmath.limit;

import java.util.Collections;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a product states on one side (area, kind or form), read with the words of one table.
 *
 * @param written the words as the product has them
 * @param vocabulary the words the table knows on this side
 * @param known those of the product that the table knows, with everything else that they are
 */
record StatedWords(Set<String> written, Set<String> vocabulary, Set<String> known) {

    /** Whether a word is a thing that a scope names: unknown words, and words for more than that thing, may be. */
    private enum Match {
        YES,
        MAYBE,
        NO
    }

    static StatedWords of(Set<String> written, Set<String> vocabulary) {
        Set<String> known = written.stream()
                .filter(vocabulary::contains)
                .flatMap(ProductWords::withImplied)
                .collect(Collectors.toUnmodifiableSet());
        return new StatedWords(written, vocabulary, known);
    }

    /**
     * Whether what is stated meets the words of a scope; what is not stated, or in words unknown, leaves it open.
     *
     * @param scope the words of one side of the scope
     */
    Applicability applicabilityOf(Set<String> scope) {
        if (scope.isEmpty()) {
            return Applicability.APPLIES;
        }
        if (written.isEmpty()) {
            return Applicability.MAY_APPLY;
        }
        Set<String> meant = meant(scope);
        Match in = meant.isEmpty() ? Match.YES : match(meant);
        Match out = match(leftOut(scope));
        if (in == Match.NO || out == Match.YES) {
            return Applicability.OUT_OF_SCOPE;
        }
        boolean settled = in == Match.YES && out == Match.NO && match(with(Scope.PERHAPS_NOT, scope)) == Match.NO;
        return settled ? Applicability.APPLIES : Applicability.MAY_APPLY;
    }

    /** Whether the words that are known, taken as all there is to say, do not meet the words of a scope. */
    boolean areOutside(Set<String> scope) {
        if (scope.isEmpty() || known.isEmpty()) {
            return false;
        }
        Set<String> meant = meant(scope);
        boolean in = meant.isEmpty() || !Collections.disjoint(meant, known);
        return !in || !Collections.disjoint(leftOut(scope), known);
    }

    private static Set<String> meant(Set<String> scope) {
        return with("", scope);
    }

    private static Set<String> leftOut(Set<String> scope) {
        return with(Scope.NOT, scope);
    }

    /** The words that begin so, without what they begin with. */
    private static Set<String> with(String prefix, Set<String> scope) {
        return scope.stream()
                .filter(word -> Scope.prefix(word).equals(prefix))
                .map(word -> word.substring(prefix.length()))
                .collect(Collectors.toUnmodifiableSet());
    }

    private Set<String> unknown() {
        return written.stream().filter(word -> !vocabulary.contains(word)).collect(Collectors.toUnmodifiableSet());
    }

    /** The unknown words; none on a side on which no limit asks anything, as there is nothing that a word could settle. */
    Set<String> unknownWhereAsked() {
        return vocabulary.equals(Set.of(ProductWords.OTHER)) ? Set.of() : unknown();
    }

    /** Whether any of the terms is stated. */
    private Match match(Set<String> terms) {
        Match best = Match.NO;
        for (String term : terms) {
            for (String word : written) {
                Match match = match(word, term);
                best = match.compareTo(best) < 0 ? match : best;
            }
        }
        return best;
    }

    private Match match(String word, String term) {
        if (ProductWords.withImplied(word).anyMatch(term::equals)) {
            return Match.YES;
        }
        boolean broader = ProductWords.withImplied(term).anyMatch(word::equals) || ProductWords.mayBe(word, term);
        boolean toldApart = vocabulary.contains(word) && !ProductWords.isPlain(word);
        return ProductWords.isSurelyNot(word, term) || toldApart && !broader ? Match.NO : Match.MAYBE;
    }
}
