package io.github.formulationmath.reckoning;

import java.util.Set;

/** What a printed working does with some of its values: it leaves them blank or, in a key, makes them stand out. */
record Filling(Set<Step> steps, boolean filledIn) {

    static final Filling NONE = new Filling(Set.of(), false);

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
