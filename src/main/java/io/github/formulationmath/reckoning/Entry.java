package io.github.formulationmath.reckoning;

/** One thing a working says, in the order in which it was worked: a step, a comparison, or a remark. */
public sealed interface Entry permits Step, Entry.Decision, Entry.Note {

    /**
     * A comparison that decided something.
     *
     * @param left the term on the left
     * @param comparison the relation
     * @param right the term on the right
     * @param holds whether it holds
     */
    record Decision(Term left, Comparison comparison, Term right, boolean holds) implements Entry {}

    /**
     * An assumption or a remark.
     *
     * @param phrase the words
     */
    record Note(Phrase phrase) implements Entry {}
}
