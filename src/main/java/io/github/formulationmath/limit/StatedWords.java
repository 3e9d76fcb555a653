package io.github.formulationmath.limit;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a product states on one side (area, kind or form), read with the words of one table.
 *
 * @param written the words as the product has them
 * @param vocabulary the words the table knows on this side
 * @param known those of the product that the table knows, with everything else that they are
 * @param general what is known of words of this side whatever the table
 * @param isPart whether the words are only what something else says, so that nothing is left out by them
 * @param isOpen whether a word of another side, which nobody knows, may say more of this one
 */
record StatedWords(
        Set<String> written,
        Set<String> vocabulary,
        Set<String> known,
        ProductWords.Vocabulary general,
        boolean isPart,
        boolean isOpen) {

    /** Whether a word is a thing that a scope names: unknown words, and words for more than that thing, may be. */
    private enum Match {
        YES,
        MAYBE,
        NO
    }

    static StatedWords of(Set<String> written, Set<String> vocabulary, ProductWords.Vocabulary general) {
        Set<String> known = new HashSet<>();
        for (String word : written) {
            if (vocabulary.contains(word)) {
                known.addAll(general.also(word));
            }
        }
        return new StatedWords(written, vocabulary, Set.copyOf(known), general, false, false);
    }

    /** The same words if nothing was stated on this side. */
    StatedWords asPart() {
        return new StatedWords(written, vocabulary, known, general, true, isOpen);
    }

    /** The same words beside others that nobody knows. */
    StatedWords asOpen(boolean open) {
        return new StatedWords(written, vocabulary, known, general, isPart, open);
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
        boolean in = isPart || meant.isEmpty() || !Collections.disjoint(meant, known);
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
        Set<String> words = new HashSet<>();
        for (String word : scope) {
            if (Scope.prefix(word).equals(prefix)) {
                words.add(word.substring(prefix.length()));
            }
        }
        return Set.copyOf(words);
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
        if (general.also(word).contains(term)) {
            return Match.YES;
        }
        if (isForms() && ProductWords.isSurelyNot(word, term) || !isOpen && word.equals(ProductWords.OTHER)) {
            return Match.NO;
        }
        boolean broader =
                general.also(term).contains(word) || general.mayBe(word).contains(term);
        boolean toldApart =
                !isPart && !isOpen && vocabulary.contains(word) && !(isForms() && ProductWords.isPlain(word));
        return toldApart && !broader && !isAlike(word, term) ? Match.NO : Match.MAYBE;
    }

    private boolean isForms() {
        return general.equals(ProductWords.Vocabulary.FORMS);
    }

    /** Whether a word of a table's own may mean the same, as it has a part in common: balm, of lip_balm. */
    private boolean isAlike(String word, String term) {
        return general.has(word)
                && !general.has(term)
                && !Collections.disjoint(List.of(word.split("_", -1)), List.of(term.split("_", -1)));
    }
}
