package io.github.formulationmath.working;

import java.util.Set;
import java.util.stream.Collectors;

/** What a printed working does with its values: which it leaves blank or, in a key, fills in. */
record Filling(Set<Step> steps, boolean filledIn) {

    static final Filling NONE = new Filling(Set.of(), false);

    static Filling of(Worksheet worksheet, boolean filledIn) {
        return new Filling(worksheet.blanks().stream().map(Blank::step).collect(Collectors.toSet()), filledIn);
    }

    boolean isBlank(Term term) {
        return !filledIn && isAsked(term);
    }

    boolean isFilledIn(Term term) {
        return filledIn && isAsked(term);
    }

    private boolean isAsked(Term term) {
        return term instanceof Step step && steps.contains(step);
    }
}
